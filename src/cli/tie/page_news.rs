//! What is new on a page since it was printed last.

use crate::session::Page;

/// The lines of a page that were not printed before: first what the tyer must know, then the answer,
/// then the step; and the step once more when it was asked for and nothing is new.
pub fn page_news(page: &Page, before: Option<&Page>, is_asked_again: bool) -> Vec<String> {
    let mut new: Vec<String> = page
        .notices
        .iter()
        .chain(&page.pause)
        .chain(&page.voice_lost)
        .filter(|notice| {
            let was_there = |before: &Page| {
                before.notices.contains(notice)
                    || before.pause.as_ref() == Some(notice)
                    || before.voice_lost.as_ref() == Some(notice)
            };
            !before.is_some_and(was_there)
        })
        .cloned()
        .collect();
    let answered_before = before.and_then(|before| before.answer.as_ref());
    if page.answer.as_ref() != answered_before {
        new.extend(page.answer.clone());
    }
    let is_other_step = before.map(Page::lines) != Some(page.lines());
    let is_again = is_asked_again && new.is_empty();
    if is_other_step || is_again {
        new.extend(page.lines());
    }
    new
}
