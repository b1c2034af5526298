//! A knot that the tyer has in mind already, held against what it is to cover.

use super::FitQuestion;
use crate::bench::{
    Braid, Counts, DrawnUp, FitAnswer, FitFilter, FitWish, Ground, MOST_LEADS_AND_BIGHTS,
    MOST_PASSES, Millimetres, Object, RigCaution, RigError, WidthRange,
};

/// Leads and bights of a knot that the tyer has in mind.
///
/// ```
/// use marlinspeak::guide::KnownKnot;
///
/// let grip = KnownKnot::parse("5 7");
/// assert_eq!(grip, Some(KnownKnot { leads: 5, bights: 7 }));
/// // However the two numbers are kept apart.
/// for typed in ["5x7", "5 × 7", "5,7", "5 lead 7 bight"] {
///     assert_eq!(KnownKnot::parse(typed), grip);
/// }
/// for typed in ["", "5", "5 7 2", "1 7", "5 61"] {
///     assert_eq!(KnownKnot::parse(typed), None, "{typed}");
/// }
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct KnownKnot {
    /// Leads.
    pub leads: u16,
    /// Bights.
    pub bights: u16,
}

/// What a knot in so many passes comes to on an object.
///
/// ```
/// use marlinspeak::guide::{KnownKnot, KnownVerdict, Presets, SetupField, SetupForm};
///
/// // 5 leads and 7 bights on a tiller of 28 mm, to be covered for 30 mm with cord of 4 mm.
/// let form = SetupForm::from_iter([
///     (SetupField::Object, "28"),
///     (SetupField::Cover, "30"),
///     (SetupField::Cord, "4"),
/// ]);
/// let question = form.question(&Presets::default())?;
/// let grip = KnownKnot { leads: 5, bights: 7 };
/// let known = question.known(grip, false);
/// assert_eq!(known.iter().map(|known| known.counts.passes()).collect::<Vec<_>>(), [1, 2, 3, 4]);
/// let single = known[0].range.expect("it goes round");
/// assert!(single.tight < single.widest);
/// # Ok::<(), marlinspeak::guide::SetupError>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct KnownFit {
    /// Leads, bights and passes.
    pub counts: Counts,
    /// The widths it can have there; none when it does not go round, or hides nothing.
    pub range: Option<WidthRange>,
    /// Whether it covers what it is to cover.
    pub verdict: KnownVerdict,
}

/// Whether a knot covers what it is to cover.
///
/// ```
/// use marlinspeak::guide::{KnownKnot, KnownVerdict, Presets, SetupField, SetupForm};
///
/// // 5 leads and 7 bights on a tiller of 28 mm, to be covered for 30 mm with cord of 4 mm.
/// let form = SetupForm::from_iter([
///     (SetupField::Object, "28"),
///     (SetupField::Cover, "30"),
///     (SetupField::Cord, "4"),
/// ]);
/// let question = form.question(&Presets::default())?;
/// let grip = KnownKnot { leads: 5, bights: 7 };
/// let single = &question.known(grip, false)[0];
/// assert_eq!(single.verdict, KnownVerdict::TooNarrow);
/// assert!(!single.verdict.is_met());
/// # Ok::<(), marlinspeak::guide::SetupError>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub enum KnownVerdict {
    /// Nothing is said of a length to cover.
    AnyWidth,
    /// It does, drawn up to this width.
    Covers {
        /// So wide, the nearest to what was asked.
        width: Millimetres,
        /// Where in its range that is.
        drawn: DrawnUp,
        /// What the tube makes hard.
        cautions: Vec<RigCaution>,
    },
    /// Even the widest covers less.
    TooNarrow,
    /// Even drawn tight it is wider.
    TooWide,
    /// It does not go round: so many cords have no room there.
    DoesNotGoRound,
    /// It would, but not on the tube that is chosen.
    NotOnTube(RigError),
    /// It does, and takes more cord than there is.
    NotEnoughCord {
        /// Cord in hand.
        at_hand: Millimetres,
        /// Cord to cut for it.
        needed: Millimetres,
    },
}

impl KnownVerdict {
    /// Whether it can be tied as it was asked for.
    pub const fn is_met(&self) -> bool {
        matches!(self, Self::AnyWidth | Self::Covers { .. })
    }
}

impl KnownKnot {
    /// Reads two numbers, leads and bights, each from 2 to [`MOST_LEADS_AND_BIGHTS`], with anything
    /// between them.
    pub fn parse(text: &str) -> Option<Self> {
        let numbers = text.split(|letter: char| !letter.is_ascii_digit());
        let mut numbers = numbers.filter(|number| !number.is_empty());
        let mut next = || {
            let number = numbers.next()?.parse().ok()?;
            (2..=MOST_LEADS_AND_BIGHTS)
                .contains(&number)
                .then_some(number)
        };
        let [leads, bights] = [next()?, next()?];
        numbers.next().is_none().then_some(Self { leads, bights })
    }

    /// In so many passes.
    fn counts(self, passes: u16) -> Option<Counts> {
        Counts::new(self.leads, self.bights, passes).ok()
    }

    /// Whether an answer is this knot.
    fn is(self, counts: Counts) -> bool {
        counts.nested() == 1 && counts.leads() == self.leads && counts.bights() == self.bights
    }
}

impl FitQuestion {
    /// What a knot comes to on the object, in one pass, two, and so on. `any_width` when nothing is said
    /// of a length to cover.
    pub fn known(&self, knot: KnownKnot, any_width: bool) -> Vec<KnownFit> {
        let answers = if any_width {
            Vec::new()
        } else {
            self.answers_of(knot)
        };
        let passes = (1..=MOST_PASSES).filter_map(|passes| knot.counts(passes));
        passes
            .map(|counts| self.known_fit(counts, any_width, &answers))
            .collect()
    }

    /// The answers that are this knot, whatever else is wanted of knots; with `any_width` each drawn
    /// tight.
    pub fn answers_with(&self, knot: KnownKnot, any_width: bool) -> Vec<FitAnswer> {
        if !any_width {
            let mut answers = self.answers_of(knot);
            answers.retain(|answer| self.have.is_none_or(|have| answer.cord <= have));
            return answers;
        }
        let passes = (1..=MOST_PASSES).filter_map(|passes| knot.counts(passes));
        let tight = passes.filter_map(|counts| {
            let range = self.range(counts)?;
            let question = Self {
                object: Object::new(self.object.ground, range.tight),
                ..self.clone()
            };
            let mut answers = question.answers_of(knot).into_iter();
            answers.find(|answer| answer.counts.passes() == counts.passes())
        });
        tight.collect()
    }

    fn answers_of(&self, knot: KnownKnot) -> Vec<FitAnswer> {
        let question = Self {
            have: None,
            filter: FitFilter {
                nested: Some(1),
                ..FitFilter::default()
            },
            ..self.clone()
        };
        let mut answers = question.answers();
        answers.retain(|answer| knot.is(answer.counts));
        answers
    }

    fn range(&self, counts: Counts) -> Option<WidthRange> {
        let braid = Braid {
            give: self.cord.give,
            correction: self.correction(counts),
            ..Braid::new(counts, self.cord.diameter, self.object.ground)
        };
        WidthRange::of(&braid, self.least_cover)
    }

    fn known_fit(&self, counts: Counts, any_width: bool, answers: &[FitAnswer]) -> KnownFit {
        let range = self.range(counts);
        let verdict = match range {
            None => KnownVerdict::DoesNotGoRound,
            Some(range) if any_width => match self.on_tube(counts, range, range.tight) {
                Ok(_) => KnownVerdict::AnyWidth,
                Err(error) => KnownVerdict::NotOnTube(error),
            },
            Some(range) => self.verdict(counts, range, answers),
        };
        KnownFit {
            counts,
            range,
            verdict,
        }
    }

    /// What to take care of with a knot so wide on the tube that is chosen; nothing without one.
    fn on_tube(
        &self,
        counts: Counts,
        range: WidthRange,
        width: Millimetres,
    ) -> Result<Vec<RigCaution>, RigError> {
        let open_to = (width > range.tight).then_some(width);
        let Some(setup) = self.setup_for(counts, open_to) else {
            return Ok(Vec::new());
        };
        Ok(setup.rig(counts)?.cautions)
    }

    fn verdict(&self, counts: Counts, range: WidthRange, answers: &[FitAnswer]) -> KnownVerdict {
        let cover = self.object.cover;
        let tolerance = FitWish::new(self.object, self.cord.diameter).tolerance;
        // A ball and a mat are covered as far as the knot goes, and what does not hide them is no answer.
        let is_whole = matches!(self.object.ground, Ground::Ball(_) | Ground::Flat { .. });
        if !is_whole && range.tight.get() > cover.get() + tolerance.get() {
            return KnownVerdict::TooWide;
        }
        if !is_whole && range.widest.get() < cover.get() - tolerance.get() {
            return KnownVerdict::TooNarrow;
        }
        let width = if is_whole {
            range.widest
        } else {
            range.nearest(cover)
        };
        let cautions = match self.on_tube(counts, range, width) {
            Ok(cautions) => cautions,
            Err(error) => return KnownVerdict::NotOnTube(error),
        };
        let answer = answers
            .iter()
            .find(|answer| answer.counts.passes() == counts.passes());
        if is_whole && answer.is_none() {
            return KnownVerdict::TooNarrow;
        }
        if let (Some(answer), Some(at_hand)) = (answer, self.have)
            && answer.cord > at_hand
        {
            return KnownVerdict::NotEnoughCord {
                at_hand,
                needed: answer.cord,
            };
        }
        KnownVerdict::Covers {
            width,
            drawn: range.drawn_up(width),
            cautions,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::guide::{Presets, SetupField, SetupForm};

    const GRIP: KnownKnot = KnownKnot {
        leads: 5,
        bights: 7,
    };

    fn question(fields: &[(SetupField, &str)]) -> FitQuestion {
        let form: SetupForm = fields.iter().copied().collect();
        form.question(&Presets::default()).unwrap()
    }

    fn of_tiller<'a>(cover: &'a str, more: &[(SetupField, &'a str)]) -> FitQuestion {
        let mut fields = vec![
            (SetupField::Object, "28"),
            (SetupField::Cover, cover),
            (SetupField::Cord, "4"),
        ];
        fields.extend(more);
        question(&fields)
    }

    #[test]
    fn what_is_said_of_a_knot_agrees_with_what_the_search_offers() {
        // The search knows nothing of a knot in mind: it is another way to the same answers.
        for cover in ["12", "20", "30", "36", "48", "70", "200"] {
            let question = of_tiller(cover, &[]);
            let offered: Vec<u16> = question
                .answers()
                .iter()
                .filter(|answer| GRIP.is(answer.counts))
                .map(|answer| answer.counts.passes())
                .collect();
            for known in question.known(GRIP, false) {
                let is_offered = offered.contains(&known.counts.passes());
                assert_eq!(known.verdict.is_met(), is_offered, "{cover}: {known:?}");
                if let KnownVerdict::Covers { width, .. } = known.verdict {
                    assert!((width.get() - question.object.cover.get()).abs() <= 2.0);
                }
            }
        }
    }

    #[test]
    fn on_a_ball_and_as_a_mat_it_is_held_to_the_whole_of_them() {
        let cord = (SetupField::Cord, "3");
        for ground in [
            (SetupField::Ball, "38"),
            (SetupField::Mat, "150"),
            (SetupField::Mat, "150:60"),
        ] {
            let question = question(&[ground, cord]);
            let offered = question.answers();
            for knot in [[7, 6], [9, 8], [5, 7], [3, 4], [40, 40]] {
                let [leads, bights] = knot;
                let knot = KnownKnot { leads, bights };
                for known in question.known(knot, false) {
                    let mut alike = offered.iter().filter(|answer| knot.is(answer.counts));
                    let is_offered =
                        alike.any(|answer| answer.counts.passes() == known.counts.passes());
                    assert_eq!(known.verdict.is_met(), is_offered, "{ground:?}: {known:?}");
                }
            }
        }
    }

    #[test]
    fn what_is_in_the_way_is_named() {
        let verdicts = |question: &FitQuestion| {
            let known = question.known(GRIP, false).into_iter();
            known.map(|known| known.verdict).collect::<Vec<_>>()
        };
        assert!(verdicts(&of_tiller("200", &[])).contains(&KnownVerdict::TooNarrow));
        assert!(verdicts(&of_tiller("8", &[])).contains(&KnownVerdict::TooWide));
        let thick = question(&[
            (SetupField::Object, "12"),
            (SetupField::Cover, "30"),
            (SetupField::Cord, "6"),
        ]);
        assert!(verdicts(&thick).contains(&KnownVerdict::DoesNotGoRound));
        // The widest single, so that only what comes after its width can be in the way.
        let single = of_tiller("30", &[]).known(GRIP, false)[0].range.unwrap();
        let cover = single.tight.get().to_string();
        let tube = [(SetupField::Tube, "45"), (SetupField::Rows, "20")];
        let on_tube = verdicts(&of_tiller(&cover, &tube));
        assert!(
            matches!(on_tube[0], KnownVerdict::NotOnTube(_)),
            "{on_tube:?}"
        );
        let short = verdicts(&of_tiller(&cover, &[(SetupField::Have, "300")]));
        assert!(
            matches!(short[0], KnownVerdict::NotEnoughCord { .. }),
            "{short:?}"
        );
    }

    #[test]
    fn without_a_length_to_cover_each_is_offered_as_tight_as_it_goes() {
        let question = of_tiller("30", &[]);
        let known = question.known(GRIP, true);
        let answers = question.answers_with(GRIP, true);
        assert!(!answers.is_empty());
        for answer in answers {
            let of_it = &known[usize::from(answer.counts.passes()) - 1];
            let tight = of_it.range.unwrap().tight.get();
            assert!((answer.shape.width.get() - tight).abs() < 0.1, "{answer:?}");
            assert_eq!(of_it.verdict, KnownVerdict::AnyWidth);
        }
    }
}
