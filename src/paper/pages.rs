//! The pages of a sheet, with their words.

use crate::bench::{Layout, Millimetres, Tube, pinning};
use crate::guide::{AtOnce, FinishTask, Labour, Place, Plan, Script, Step, What};
use crate::picture::sheet::{
    BoardSheet, Card, CardEnd, CardSection, LegLine, Paper, SheetPage, StageSheet, StripSheet,
    StripTexts,
};
use crate::picture::{Moment, Scene, Subject, View, Viewport};
use crate::words::Words;

/// The card of a plan; with the holes of the pins when the tube is known.
pub fn card(
    plan: &Plan,
    pinned: Option<(&Tube, &Layout)>,
    labour: &Labour,
    paper: Paper,
    words: &Words,
) -> Vec<SheetPage> {
    let (card, scene) = card_of(plan, pinned, labour, words);
    card.pages(paper, scene, |page, pages| words.sheet_page(page, pages))
}

/// The texts of a card, and the picture on it.
pub(super) fn card_of<'p>(
    plan: &'p Plan,
    pinned: Option<(&Tube, &Layout)>,
    labour: &Labour,
    words: &Words,
) -> (Card, impl Fn(Viewport) -> Scene + 'p) {
    let words = &words.on(plan.rims());
    let script = Script::new(plan.clone(), AtOnce::WholeLeg);
    let mut facts = vec![words.facts(&script).into()];
    facts.extend(words.card_facts(plan, pinned));
    facts.extend(words.card_rigging(&script));
    facts.push(words.labour(labour));
    let card = Card {
        title: words.tie_line(plan),
        facts,
        heads: ["card-head-leg", "card-head-way", "card-head-crossings"]
            .map(|head| words.plainly(head, &[])),
        sections: sections(&script, words),
        after_head: words.plainly("card-after", &[]),
        after: words.card_after(&script),
        ends_head: words.plainly("card-ends", &[]),
        ends: ends(&script, words),
        cautions_head: words.plainly("card-cautions", &[]),
        cautions: words.card_cautions(),
    };
    let scene = move |frame| {
        let tied = Subject::tied(plan, Moment::Finished);
        tied.scene(View::RoundTheTube, frame)
    };
    (card, scene)
}

/// Where the ends are tucked away.
fn ends(script: &Script, words: &Words) -> Vec<CardEnd> {
    let steps = script.places().filter_map(|place| script.step(place));
    let tucks = steps.filter(|step| {
        let What::Finish(finish) = &step.what else {
            return false;
        };
        matches!(finish.task, FinishTask::Tuck(_))
    });
    let end = |step: Step| CardEnd {
        text: words.show(script.plan().knot(), &step).in_words(),
        subject: Subject::of(script, &step),
    };
    tucks.map(end).collect()
}

fn sections(script: &Script, words: &Words) -> Vec<CardSection> {
    let strands = script.plan().knot().strands();
    let mut sections: Vec<CardSection> = Vec::new();
    for step in script.places().filter_map(|place| script.step(place)) {
        if let Place::Begin { pass, strand } = step.place {
            sections.push(CardSection {
                head: words.card_pass(pass, strand, strands, script.plan().start_pin(pass, strand)),
                legs: Vec::new(),
            });
        }
        if let What::Lay(lay) = &step.what {
            let line = LegLine {
                number: lay.pass_leg.leg.to_string(),
                way: words.card_way(lay),
                crossings: lay
                    .crossings
                    .iter()
                    .map(|crossing| (crossing.over, words.card_crossing(crossing)))
                    .collect(),
            };
            if let Some(section) = sections.last_mut() {
                section.legs.push(line);
            }
        }
    }
    sections
}

/// The strips of a plan for a tube pinned like this.
pub fn strip(
    plan: &Plan,
    tube: &Tube,
    layout: &Layout,
    paper: Paper,
    words: &Words,
) -> Vec<SheetPage> {
    let words = &words.on(plan.rims());
    let (bar_length, bar) = words.strip_bar();
    let is_in_place = plan.setup().is_some_and(|setup| setup.in_place);
    let (title, how) = match layout {
        Layout::Board(board) => (words.board_title(plan, board), words.board_how(plan)),
        _ if is_in_place => (
            words.tape_title(plan, tube, layout),
            words.strip_how(plan, layout),
        ),
        _ => (words.strip_title(plan, tube), words.strip_how(plan, layout)),
    };
    let texts = StripTexts {
        title,
        how,
        cautions: words.strip_cautions(),
        rings: if is_in_place {
            ["tape-top", "tape-bottom"]
        } else {
            ["strip-top", "strip-bottom"]
        }
        .map(|ring| words.plainly(ring, &[])),
        rows: words.strip_rows(plan.knot().nested()),
        bar,
        bar_length,
        cut: words.plainly("strip-cut", &[]),
    };
    let join = |page| words.strip_join(page);
    let foot = |page, pages| words.sheet_page(page, pages);
    match board_sheet(plan, layout) {
        Some(board) => board.pages(paper, &texts, join, foot),
        None => StripSheet::new(tube, layout, rows_apart(plan), plan.hand)
            .pages(paper, &texts, join, foot),
    }
}

/// The sheet of a board, where the pins of a plan stand on one.
pub(super) fn board_sheet(plan: &Plan, layout: &Layout) -> Option<BoardSheet> {
    let Layout::Board(board) = layout else {
        return None;
    };
    let lattice = plan.knot().lattice();
    let turns = f32::from(lattice.height()) / f32::from(lattice.round());
    let angle = turns * std::f32::consts::TAU;
    Some(BoardSheet::new(board, angle, plan.hand))
}

/// The tube of a plan and where its pins go; on what it is tied on, when that is no tube.
pub fn pinned(plan: &Plan) -> Option<(&Tube, Layout)> {
    let tube = &plan.setup()?.tube;
    if let Some(rig) = plan.rig().ok().flatten() {
        return Some((tube, rig.layout.clone()));
    }
    Some((tube, pinning(tube, plan.knot().lattice())?))
}

/// From a row of pins to the next one inside it, where bights are nested and tube and cord are named.
pub(super) fn rows_apart(plan: &Plan) -> Option<Millimetres> {
    plan.rig().ok().flatten()?.laid.rows_apart
}

/// The picture while this step of a plan is told.
pub fn stage(script: &Script, step: &Step, view: View, paper: Paper, words: &Words) -> SheetPage {
    let subject = Subject::of(script, step);
    staged(script, step, words).page(paper, |frame| subject.scene(view, frame))
}

/// What stands round that picture.
pub(super) fn staged(script: &Script, step: &Step, words: &Words) -> StageSheet {
    let plan = script.plan();
    let shown = words.show(plan.knot(), step);
    let marks: Vec<String> = shown.marks.into_iter().map(|mark| mark.text).collect();
    let mut notes = Vec::new();
    // What the keys of the program do is of no use on paper.
    if !matches!(step.what, What::Fair(_)) {
        notes.extend(shown.notes);
    }
    notes.extend(shown.caution);
    let signs = match step.what {
        What::Lay(_) => words.plainly("stage-signs", &[]),
        _ => String::new(),
    };
    StageSheet {
        knot: words.tie_line(plan),
        phase: shown.phase,
        line: shown.line,
        crossings: marks.join(" · "),
        notes,
        signs,
    }
}
