//! What the paper screen has done on threads of its own: asking the system where a file goes, making
//! it, opening it.

use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::time::{Duration, Instant};

use iced::Task;
use iced::futures::channel::mpsc;

use super::Message;
use crate::app::off_thread::{Number, off_thread};
use crate::app::screens::context::Context;
use crate::app::services::SaveDialog;
use crate::paper::{Overwrite, PaperError, PaperKind, PaperOrder};
use crate::shelf::{Ledger, Shelf, ShelfReading};

/// Between two tellings of how far it is.
const BETWEEN: Duration = Duration::from_millis(100);
/// Crossings of a card, pass upon pass, of which a page is shown before it is made: a second of work.
const MOST_GLANCED: u64 = 10_000;

/// What came of making something, and what the log of the shelf had to say on the way.
pub type Outcome = ShelfReading<Result<Vec<PathBuf>, Arc<PaperError>>>;

/// Asks the system where a file goes.
pub fn ask(
    number: Number,
    asked: SaveDialog,
    stop: &Arc<AtomicBool>,
    context: &Context,
) -> Task<Message> {
    let dialogs = Arc::clone(&context.services.platform.dialogs);
    let stop = Arc::clone(stop);
    off_thread(move || Message::Named(number, dialogs.save(&asked, &stop)))
}

/// Makes it, telling how far it is, until `stop` is raised.
pub fn make(
    number: Number,
    order: PaperOrder,
    file: PathBuf,
    overwrite: Overwrite,
    stop: &Arc<AtomicBool>,
    context: &Context,
) -> Task<Message> {
    let words = context.words().maker();
    let shelf = context.services.shelf.clone();
    let stop = Arc::clone(stop);
    let (tell, told) = mpsc::unbounded();
    let made = off_thread(move || {
        let mut last: Option<Instant> = None;
        let goes_on = |done, count| {
            if last.is_none_or(|last| last.elapsed() >= BETWEEN) {
                last = Some(Instant::now());
                // When nobody listens any more the window is gone.
                let _ = tell.unbounded_send(Message::Progress(number, done, count));
            }
            !stop.load(Ordering::Relaxed)
        };
        let words = words();
        let ledger = ledger(shelf.as_ref(), order.kind);
        let outcome = ledger.map(|ledger| {
            let made = order.make(&file, overwrite, ledger.pace(), &words, goes_on);
            made.map_err(Arc::new)
        });
        Message::Made(number, Box::new(outcome))
    });
    Task::batch([Task::run(told, |message| message), made])
}

/// Paints the first page or frame, where that does not take long.
pub fn glance(number: Number, order: PaperOrder, context: &Context) -> Task<Message> {
    let laying = order.plan.laying();
    let passes = u64::from(laying.passes());
    let crossings = u64::from(order.plan.knot().crossings()) * passes * passes;
    if crossings > MOST_GLANCED {
        return Task::none();
    }
    let words = context.words().maker();
    off_thread(move || {
        // At the usual pace: the tyer's own stands in what is made.
        let image = order.glance(None, &words());
        let image = image.map_err(|error| ::log::info!("nothing to show of it: {error}"));
        Message::Glanced(number, image.ok())
    })
}

/// Opens what was made with whatever the tyer opens such files with.
pub fn show(file: &Path, context: &Context) -> Task<Message> {
    let dialogs = Arc::clone(&context.services.platform.dialogs);
    let file = file.to_owned();
    off_thread(move || Message::Opened(dialogs.show(&file)))
}

/// What the log says, for a card, which tells the time the tie takes.
fn ledger(shelf: Option<&Shelf>, kind: PaperKind) -> ShelfReading<Ledger> {
    let shelf = shelf.filter(|_| kind == PaperKind::Card);
    match shelf.map(Shelf::ledger) {
        Some(Ok(ledger)) => ledger,
        Some(Err(error)) => ShelfReading::of(Ledger::default(), vec![error.into()]),
        None => ShelfReading::whole(Ledger::default()),
    }
}
