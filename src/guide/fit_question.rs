//! The question of fit, read from what the tyer said.

use super::{Plan, Presets, Setup, SetupError, SetupField, SetupForm};
use crate::bench::{
    Cord, Correction, Corrections, Counts, Finish, FitAnswer, FitFilter, FitWish, Ground,
    LeastCover, Millimetres, Misfit, Object, OneKnot, RigCaution, Tube, TyingPace, WeaveChoice,
    WidthRange, fit, why_nothing_fits,
};

/// The question which knots cover an object: everything it needs, read and checked.
///
/// ```
/// use marlinspeak::guide::{Presets, SetupError, SetupField, SetupForm};
///
/// // A tiller of 30 mm is to be covered for 36 mm with cord of 4 mm.
/// let form = SetupForm::from_iter([
///     (SetupField::Object, "30"),
///     (SetupField::Cover, "36"),
///     (SetupField::Cord, "4"),
/// ]);
/// let question = form.question(&Presets::default())?;
/// let widths = question.answers().into_iter().map(|answer| answer.shape.width.get());
/// assert!(widths.into_iter().all(|width| (30.0..42.0).contains(&width)));
/// # Ok::<(), SetupError>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct FitQuestion {
    /// What is to be covered.
    pub object: Object,
    /// The cord it is to be tied with.
    pub cord: Cord,
    /// Whether it is tied on what it covers, and not on a tube.
    pub in_place: bool,
    /// The tube, if chosen.
    pub tube: Option<Tube>,
    /// Cord at hand, if it matters.
    pub have: Option<Millimetres>,
    /// The weave that the knots are to have.
    pub weave: WeaveChoice,
    /// How much must be hidden.
    pub least_cover: LeastCover,
    /// Which knots are wanted.
    pub filter: FitFilter,
    /// What the tyer's log says of the cord.
    pub corrections: Corrections,
    /// What it says of it in the interwoven knots that are offered beside plain ones.
    pub interwoven_corrections: Corrections,
    /// The tyer's own pace, when it is known.
    pub own_pace: Option<TyingPace>,
    /// The one knot that is asked about; none for all of them.
    pub only: Option<OneKnot>,
}

impl FitQuestion {
    fn wish(&self) -> FitWish<'_> {
        FitWish {
            give: self.cord.give,
            weave: self.weave,
            tube: self.tube.as_ref(),
            in_place: self.in_place,
            cord_at_hand: self.have,
            least_cover: self.least_cover,
            filter: self.filter,
            corrections: self.corrections,
            interwoven_corrections: self.interwoven_corrections,
            pace: self.own_pace.unwrap_or(TyingPace::USUAL),
            only: self.only,
            ..FitWish::new(self.object, self.cord.diameter)
        }
    }

    /// The same question about this knot alone, however long it comes out.
    ///
    /// # Examples
    /// ```
    /// use marlinspeak::guide::{Plan, Presets, SetupField, SetupForm};
    ///
    /// let form = SetupForm::from_iter([
    ///     (SetupField::Object, "30"),
    ///     (SetupField::Cover, "36"),
    ///     (SetupField::Cord, "4"),
    /// ]);
    /// let plan = Plan::read("5", "7", "2", "oouu")?;
    /// let answers = form.question(&Presets::default())?.about(&plan).answers();
    /// assert_eq!((answers.len(), answers[0].counts.leads()), (1, 5));
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    #[must_use]
    pub fn about(self, plan: &Plan) -> Self {
        let laying = plan.laying();
        Self {
            filter: FitFilter {
                nested: Some(plan.knot().nested()),
                ..FitFilter::default()
            },
            only: Some(OneKnot {
                counts: laying.into(),
                tucks: laying.tucks(),
                other_tucks: laying.with_twin().tucks(),
            }),
            ..self
        }
    }

    /// Every knot that answers, in the order in which they are offered.
    pub fn answers(&self) -> Vec<FitAnswer> {
        fit(&self.wish())
    }

    /// What to take care of with an answer on the tube that is chosen.
    pub fn cautions(&self, answer: &FitAnswer) -> Vec<RigCaution> {
        let rig = self.setup(answer).map(|setup| setup.rig(answer.counts));
        // What is offered can be rigged.
        rig.and_then(Result::ok)
            .map_or(Vec::new(), |rig| rig.cautions)
    }

    /// What the tyer's log says of a knot that answers.
    pub fn correction(&self, counts: Counts) -> Correction {
        let is_beside = self.filter.nested.is_none() && counts.lattice().is_interwoven();
        let corrections = if is_beside {
            &self.interwoven_corrections
        } else {
            &self.corrections
        };
        corrections.of(counts.passes())
    }

    /// Why there is no answer, and what would be one.
    pub fn misfits(&self) -> Vec<Misfit> {
        why_nothing_fits(&self.wish())
    }

    /// The setup for an answer; none as long as a tube is wanted and not chosen.
    pub fn setup(&self, answer: &FitAnswer) -> Option<Setup> {
        let open_to = (!answer.shape.is_tight()).then_some(answer.shape.width);
        self.setup_for(answer.counts, open_to)
    }

    /// The setup for a knot that is opened so far.
    pub(super) fn setup_for(&self, counts: Counts, open_to: Option<Millimetres>) -> Option<Setup> {
        let around = self.object.ground;
        let bare = if self.in_place {
            Setup::in_place(around, self.cord.clone())
        } else {
            Setup::new(self.tube.clone()?, self.cord.clone())
        };
        Some(Setup {
            finish: Some(Finish { around, open_to }),
            correction: self.correction(counts),
            ..bare
        })
    }
}

impl SetupForm {
    /// The question of fit, with nothing measured yet and every knot wanted.
    ///
    /// # Errors
    /// A [`SetupError`]: also when object, cover or cord is missing.
    pub fn question(&self, presets: &Presets) -> Result<FitQuestion, SetupError> {
        let ground = self.ground()?;
        self.length(SetupField::Cover)?;
        let cord = self.cord(presets)?;
        let in_place = self.is_in_place()?;
        let tube = self.tube(presets)?;
        let have = self.length(SetupField::Have)?;
        let ground = needed(SetupField::Object, ground)?;
        let cover = needed(SetupField::Cover, self.cover_of(ground)?)?;
        let cord = needed(SetupField::Cord, cord)?;
        Self::check_ends(ground, &cord)?;
        Ok(FitQuestion {
            object: Object::new(ground, cover),
            cord,
            in_place,
            tube,
            have,
            weave: WeaveChoice::FewestTucks,
            least_cover: LeastCover::default(),
            filter: FitFilter::default(),
            corrections: Corrections::default(),
            interwoven_corrections: Corrections::default(),
            own_pace: None,
            only: None,
        })
    }

    /// The setup for a knot, if anything was said: the knot opened where that is what reaching
    /// the cover takes. `correct` tells what the tyer's log says of a cord.
    ///
    /// # Errors
    /// A [`SetupError`]: also when the tube or the cord is missing.
    pub fn setup(
        &self,
        presets: &Presets,
        counts: Counts,
        correct: impl FnOnce(&Cord) -> Correction,
    ) -> Result<Option<Setup>, SetupError> {
        if self.is_empty() {
            return Ok(None);
        }
        let ground = self.ground()?;
        let said_cover = self.length(SetupField::Cover)?;
        self.length(SetupField::Have)?;
        let in_place = self.is_in_place()?;
        let cord = needed(SetupField::Cord, self.cord(presets)?)?;
        let tube = self.tube(presets)?;
        let correction = correct(&cord);
        let bare = match (ground, tube) {
            (Some(ground), None) if in_place => Setup::in_place(ground, cord),
            (_, tube) => Setup::new(needed(SetupField::Tube, tube)?, cord),
        };
        let mut setup = Setup { correction, ..bare };
        if let Some(around) = ground {
            Self::check_ends(around, &setup.cord)?;
        }
        if ground.is_some() || said_cover.is_some() {
            let around = ground.unwrap_or_else(|| setup.tube.diameter.into());
            let cover = self.cover_of(around)?;
            let open_to = cover.and_then(|cover| open_to(&setup, counts, around, cover));
            setup.finish = Some(Finish { around, open_to });
        }
        Ok(Some(setup))
    }
}

/// What was said for a field that must be.
fn needed<T>(field: SetupField, said: Option<T>) -> Result<T, SetupError> {
    said.ok_or(SetupError::Missing(field))
}

/// Whether reaching `cover` means to open the knot, and how far, by the rule that [`fit`] goes by: a
/// tight knot may be wider, and the widest narrower, by as much as [`FitWish::tolerance`]. Over a ball and
/// as a mat it reaches as far as it goes.
fn open_to(
    setup: &Setup,
    counts: Counts,
    around: Ground,
    cover: Millimetres,
) -> Option<Millimetres> {
    let braid = setup.braid(counts, around);
    if matches!(around, Ground::Ball(_) | Ground::Flat { .. }) {
        let range = WidthRange::of(&braid, LeastCover::default())?;
        let is_opened = range.widest.get() > range.tight.get() * (1.0 + 1e-9);
        return is_opened.then_some(range.widest);
    }
    let tight = braid.tight().ok()?;
    let tolerance = FitWish::new(Object::new(around, cover), setup.cord.diameter).tolerance;
    let beyond = tight.width.get() - cover.get();
    if (0.0..=tolerance.get()).contains(&beyond) {
        return None;
    }
    // What is narrower than the knot goes is told of when the tube is rigged, and so is what does
    // not go round at all.
    let widest = WidthRange::of(&braid, LeastCover::default()).map(|range| range.widest);
    let nearly =
        |widest: &Millimetres| (0.0..=tolerance.get()).contains(&(cover.get() - widest.get()));
    widest.filter(nearly).or(Some(cover))
}
