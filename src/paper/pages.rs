//! The pages of a sheet, with their words.

use crate::bench::{Layout, Millimetres, Tube, pinning};
use crate::guide::{Plan, Script, Step, What};
use crate::picture::sheet::{
    BoardSheet, Laid, Paper, Sheet, SheetPage, StageSheet, StripSheet, StripTexts,
};
use crate::picture::{Subject, View};
use crate::words::Words;

/// The strips of a plan for a tube pinned like this.
pub fn strip(
    plan: &Plan,
    tube: &Tube,
    layout: &Layout,
    paper: Paper,
    words: &Words,
) -> Box<dyn Sheet> {
    let words = words.on(plan.rims());
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
    let of_feet = words.clone();
    let join = move |page| words.strip_join(page);
    let foot = move |page, pages| of_feet.sheet_page(page, pages);
    if let Some(board) = board_sheet(plan, layout) {
        return Box::new(Laid::on(board, paper, texts, join, foot));
    }
    let strips = StripSheet::new(tube, layout, rows_apart(plan), plan.hand);
    Box::new(Laid::on(strips, paper, texts, join, foot))
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
    let subject = Subject::of(script, step).captioned(&words.captions(script.plan()));
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
