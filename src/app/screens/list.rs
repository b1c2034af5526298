//! The one list of the screens: a new one is added here and in its own file.

/// Hands the screens to a macro, each with its file and with what it takes to open it.
macro_rules! for_each_screen {
    ($make:ident) => {
        $make! {
            Start(start, ()),
            Plan(plan, (crate::knot::Hand, crate::knot::Side)),
            Tying(tying, ()),
            Course(course, ()),
            Glossary(glossary, ()),
            Count(count, ()),
            Shelf(shelf, ()),
            Order(order, ()),
            Log(log, Box<crate::shelf::Entry>),
            Paper(paper, Box<TieOnPaper>),
            Settings(settings, Option<crate::words::Spoken>),
            KeyBinding(key_binding, ()),
            Knocks(knocks, ()),
        }
    };
}
pub(super) use for_each_screen;
