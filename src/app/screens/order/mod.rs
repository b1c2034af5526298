//! The order screen: several pieces at once, worked by keys alone. What a press comes to is the
//! book's affair.

use iced::widget::{Id, button, column, operation, scrollable, space, text, text_input};
use iced::{Element, Fill, Task};

use super::context::Context;
use super::route::{Go, Next};
use super::screen_page::ScreenPage;
use crate::app::key_guide::KeyHint;
use crate::app::off_thread::off_thread;
use crate::app::services::LAST_SAVE;
use crate::app::{theme, widgets};
use crate::pedal::{Intent, Press};
use crate::session::{Event, OrderAction, OrderBook, OrderJob, OrderReport, do_order_job};
use crate::shelf::{Shelf, ShelfReading};
use crate::words::Spoken;

/// The book of orders.
pub struct State {
    book: OrderBook,
}

/// What happens on the screen besides presses.
#[derive(Clone, Debug)]
pub enum Message {
    /// The line was changed.
    Typed(String),
    /// The line is to be kept.
    Enter,
    /// A line was clicked.
    Clicked(usize),
    /// A job was done.
    Done(Done),
}

/// What came of a job. Only one screen takes it in, so it is handed on and not copied.
pub type Done = std::sync::Arc<std::sync::Mutex<Option<ShelfReading<OrderReport>>>>;

/// The widget that the lines are scrolled in.
const LIST: &str = "order-list";

/// The line that is typed into.
fn line() -> Id {
    Id::new("order-line")
}

impl ScreenPage for State {
    type Message = Message;
    type Opening = ();

    /// The screen says itself once the orders are looked through.
    fn open((): (), context: &mut Context) -> (Self, Task<Message>) {
        let mut book = OrderBook::default();
        let look = if let Some(shelf) = context.services.shelf.clone() {
            do_job(shelf, OrderBook::opening(), context)
        } else {
            no_place(&mut book, context);
            Task::none()
        };
        (Self { book }, look)
    }

    fn update(&mut self, message: Message, context: &mut Context) -> Next<Message> {
        let action = match message {
            Message::Typed(typed) => {
                self.book.type_in(typed);
                context.typed();
                OrderAction::None
            }
            Message::Enter => self.book.enter(),
            Message::Clicked(at) => self.book.click(at, context.words()),
            Message::Done(done) => {
                let report = done.lock().ok().and_then(|mut done| done.take());
                let Some(report) = report else {
                    return Next::default();
                };
                let report = context.session.looked_through(report);
                match self.book.take_in(report, context.words()) {
                    Ok(OrderAction::Say(say)) => {
                        context.say_after_notices(&say);
                        return Next::run(self.scroll(context));
                    }
                    Ok(action) => action,
                    Err(error) => {
                        let sentence = context.session.refuse(&error).into();
                        if self.book.typed().is_some() {
                            OrderAction::Ask(sentence)
                        } else {
                            OrderAction::Say(sentence)
                        }
                    }
                }
            }
        };
        self.follow(action, context)
    }

    fn press(
        &mut self,
        press: &Press,
        intent: Option<Intent>,
        context: &mut Context,
    ) -> Next<Message> {
        if let Some(typed) = self.book.typed()
            && let Some(typed) = widgets::typed_on(typed, &press.key)
        {
            // The window has not put its own focus there, and what is typed must not be lost.
            self.book.type_in(typed);
            context.typed();
            return Next::run(Task::batch([
                operation::focus(line()),
                operation::move_cursor_to_end(line()),
            ]));
        }
        let action = self.book.press(press, intent, context.words());
        self.follow(action, context)
    }

    fn takes_text(&self) -> bool {
        self.book.typed().is_some()
    }

    fn hear(&mut self, event: &Event, context: &mut Context) {
        if let (true, Some(typed)) = (event.is_typing_at_rest(), self.book.typed()) {
            context.say(&context.words().say_typed(typed));
        }
    }

    fn say_again(&self, context: &Context) -> Spoken {
        self.book.say_here(context.words())
    }

    fn view<'a>(&'a self, context: &'a Context) -> Element<'a, Message> {
        let words = context.words();
        let mut page = widgets::page(12);
        page = page.push(
            text(self.book.heading(words).shown().to_owned())
                .size(theme::HEADING)
                .font(theme::BOLD),
        );
        if let Some(report) = self.book.report() {
            page = page.push(widgets::notice(report.shown().to_owned()));
        }
        if let (Some(asked), Some(typed)) = (self.book.asked(words), self.book.typed()) {
            page = page.push(text(asked.shown().to_owned()).size(theme::BODY));
            page = page.push(
                text_input("", typed)
                    .id(line())
                    .size(28)
                    .padding(8)
                    .style(theme::field)
                    .on_input(Message::Typed)
                    .on_submit(Message::Enter),
            );
        }
        let lines = self.book.lines(words);
        if context.services.shelf.is_none() {
            return page.push(space::vertical()).into();
        }
        if lines.is_empty() {
            let empty = words.plainly("orders-empty", &[]);
            return page
                .push(text(empty).size(theme::BODY))
                .push(space::vertical())
                .into();
        }
        let rows = lines.into_iter().enumerate().map(|(at, line)| {
            button(text(line.shown().to_owned()).size(26).width(Fill))
                .width(Fill)
                .padding(8)
                .style(theme::pressable(at == self.book.focus()))
                .on_press(Message::Clicked(at))
                .into()
        });
        let list = scrollable(column(rows).spacing(6)).id(LIST);
        page.push(list.width(Fill).height(Fill)).into()
    }

    fn keys(&self, _: &Context) -> Vec<KeyHint> {
        if self.book.typed().is_some() {
            return vec![
                KeyHint::enter("key-keep"),
                KeyHint::leave("key-leave-unchanged"),
            ];
        }
        let (is_open, is_piece) = self.book.depth();
        let mut keys = Vec::new();
        if is_open || !self.book.is_empty() {
            keys.extend([
                KeyHint::next("key-open-or-change"),
                KeyHint::again(),
                KeyHint::here("ArrowDown", "key-line-below"),
                KeyHint::here("ArrowUp", "key-line-above"),
                KeyHint::here("Home", "key-first"),
                KeyHint::here("End", "key-last"),
            ]);
        }
        if is_open {
            keys.extend([
                KeyHint::here("b", "key-tie-next-piece"),
                KeyHint::here("a", "key-add-piece"),
            ]);
        } else {
            keys.push(KeyHint::here("n", "key-new-order"));
        }
        if !is_piece {
            keys.extend([
                KeyHint::here("Delete", "key-delete"),
                KeyHint::here("u", "key-undo"),
            ]);
        }
        keys.push(KeyHint::leave("key-leave"));
        keys
    }
}

/// There is no shelf, so there are no orders beside it: says so and shows it.
fn no_place(book: &mut OrderBook, context: &Context) {
    let why = context.words().notice("orders-no-place", &[]);
    book.refuse(why.clone());
    context.say(&why.into());
}

/// Has a job done off the window's thread.
fn do_job(shelf: Shelf, job: OrderJob, context: &Context) -> Task<Message> {
    let keeper = context.services.keeper.clone();
    let prices = context.session.settings().prices;
    off_thread(move || {
        // What was tied last counts too.
        if let Some(keeper) = keeper {
            keeper.flush(LAST_SAVE);
        }
        let report = do_order_job(&shelf, prices, job);
        Message::Done(std::sync::Arc::new(std::sync::Mutex::new(Some(report))))
    })
}

impl State {
    fn follow(&mut self, action: OrderAction, context: &Context) -> Next<Message> {
        match action {
            OrderAction::None => Next::default(),
            OrderAction::Say(text) => {
                context.say(&text);
                Next::run(self.scroll(context))
            }
            OrderAction::Ask(text) => {
                context.say(&text);
                Next::run(Task::batch([
                    operation::focus(line()),
                    operation::select_all(line()),
                ]))
            }
            OrderAction::Do(job) => {
                if let Some(shelf) = context.services.shelf.clone() {
                    Next::run(do_job(shelf, job, context))
                } else {
                    no_place(&mut self.book, context);
                    Next::default()
                }
            }
            OrderAction::Begin(tie) => Go::Begin(tie).into(),
            OrderAction::TakeUp(id) => Go::TakeUp(id).into(),
            OrderAction::Leave => Go::start().into(),
        }
    }

    /// Brings the line in the focus into view.
    fn scroll(&self, context: &Context) -> Task<Message> {
        let lines = self.book.lines(context.words()).len();
        widgets::bring_into_view(LIST, self.book.focus(), lines)
    }
}
