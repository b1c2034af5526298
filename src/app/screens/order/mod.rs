//! The order screen: several pieces at once, worked by keys alone. What a press comes to is the
//! book's affair.

use iced::widget::{
    Id, button, column, container, operation, responsive, row, scrollable, space, text,
};
use iced::{Element, Fill, FillPortion, Task};

use super::context::Context;
use super::route::{Go, Next};
use super::screen_page::ScreenPage;
use crate::app::key_guide::KeyHint;
use crate::app::off_thread::off_thread;
use crate::app::picture_view::PictureView;
use crate::app::services::LAST_SAVE;
use crate::app::widgets::key_row::key_row;
use crate::app::{theme, widgets};
use crate::pedal::{Intent, Press};
use crate::picture::Subject;
use crate::session::{
    Event, OrderAction, OrderBook, OrderJob, OrderLine, OrderReport, do_order_job, first_tie,
};
use crate::shelf::{Shelf, ShelfReading};
use crate::words::Spoken;

/// The book of orders.
pub struct State {
    book: OrderBook,
    /// What an order could be of, as long as there is none.
    knot: PictureView,
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
    /// The button of a key was clicked.
    Key(KeyHint),
    /// A job was done.
    Done(Done),
}

/// What came of a job. Only one screen takes it in, so it is handed on and not copied.
pub type Done = std::sync::Arc<std::sync::Mutex<Option<ShelfReading<OrderReport>>>>;

/// The widget that the lines are scrolled in.
const LIST: &str = "order-list";

/// Begins an order.
const NEW_ORDER: KeyHint = KeyHint::here("n", "key-new-order");

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
        let mut knot = PictureView::default();
        let first = first_tie().ok();
        knot.show(first.map(|tie| Subject::finished(&tie.plan)));
        (Self { book, knot }, look)
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
            Message::Key(hint) => {
                let press = Press {
                    key: hint.key.to_owned(),
                    is_repeat: false,
                };
                self.book.press(&press, None, context.words())
            }
            Message::Done(done) => {
                let report = done.lock().ok().and_then(|mut done| done.take());
                let Some(report) = report else {
                    return Next::default();
                };
                let report = context.session.looked_through(report);
                match self.book.take_in(report, context.words()) {
                    Ok(OrderAction::Say(say)) => {
                        context.say_after_notices(&say);
                        return Next::run(self.scroll());
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
        if intent == Some(Intent::Next) && self.invites() && !press.is_repeat {
            return self.update(Message::Key(NEW_ORDER), context);
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
        self.book.say_again(context.words())
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
            page = page.push(widgets::line(line(), typed, Message::Typed, Message::Enter));
        }
        if context.services.shelf.is_none() {
            return page.push(space::vertical()).into();
        }
        if self.invites() {
            return page.push(self.inviting(context)).into();
        }
        if self.book.typed().is_none() {
            let bindings = &context.session.settings().bindings;
            page = page.push(key_row(&self.offers(), words, bindings, Message::Key));
        }
        if self.book.lines().is_empty() {
            return page.push(space::vertical()).into();
        }
        let rows = self.book.lines().iter().enumerate();
        let rows = rows.map(|(at, line)| self.line(at, line));
        let list = scrollable(column(rows).spacing(6)).id(LIST);
        page.push(list.width(Fill).height(Fill)).into()
    }

    fn redraw(&mut self, context: &Context) {
        self.knot.set_dots(context.dots());
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
        if self.invites() {
            keys.push(KeyHint::next("key-new-order"));
        }
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
        keys.extend(self.offers());
        if !is_piece {
            keys.push(KeyHint::here("Delete", "key-delete"));
            if !self.book.can_undo() {
                keys.push(KeyHint::here("u", "key-undo"));
            }
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
    /// Whether there is no order yet, and none is being named.
    fn invites(&self) -> bool {
        self.book.has_none() && self.book.typed().is_none()
    }

    /// What an order is and how to begin one, and a knot of which it could be: beside it, or below it where
    /// it is high. The button that begins one stands where what leads on always stands.
    fn inviting<'a>(&'a self, context: &'a Context) -> Element<'a, Message> {
        responsive(move |room| {
            let words = context.words();
            let told = text(words.plainly("orders-empty", &[])).size(theme::BODY);
            let bindings = &context.session.settings().bindings;
            let undo = self.book.can_undo().then(|| {
                let undo = [KeyHint::here("u", "key-undo")];
                key_row(&undo, words, bindings, Message::Key)
            });
            let told = container(column![told].push(undo).spacing(18));
            let knot = container(self.knot.view());
            if room.height > room.width {
                return column![told, knot.height(Fill)].spacing(24).into();
            }
            let (told, knot) = (told.width(FillPortion(3)), knot.width(FillPortion(2)));
            row![told, knot].spacing(24).height(Fill).into()
        })
        .into()
    }

    /// What can be done on the page besides opening and changing its lines.
    fn offers(&self) -> Vec<KeyHint> {
        let own: &[KeyHint] = match self.book.depth() {
            (false, _) => &[NEW_ORDER],
            (true, false) => &[
                KeyHint::here("a", "key-add-piece"),
                KeyHint::here("b", "key-tie-next-piece"),
            ],
            (true, true) => &[
                KeyHint::here("b", "key-tie-next-piece"),
                KeyHint::here("a", "key-add-piece"),
            ],
        };
        let undo = KeyHint::here("u", "key-undo");
        let undo = self.book.can_undo().then_some(undo);
        own.iter().copied().chain(undo).collect()
    }

    /// A line: in a frame where it can be opened or changed, and as a line of text where it is a fact.
    fn line<'a>(&self, at: usize, line: &'a OrderLine) -> Element<'a, Message> {
        let is_here = at == self.book.focus();
        let told = text(line.text.shown()).width(Fill);
        if !line.is_fact() {
            return button(told.size(26))
                .width(Fill)
                .padding(8)
                .style(theme::pressable(is_here))
                .on_press(Message::Clicked(at))
                .into();
        }
        let told = told.size(theme::BODY);
        let told = if line.is_heading() {
            told.font(theme::BOLD)
        } else {
            told
        };
        container(told)
            .width(Fill)
            .padding([2, 9])
            .style(theme::fact(is_here))
            .into()
    }

    fn follow(&mut self, action: OrderAction, context: &Context) -> Next<Message> {
        match action {
            OrderAction::None => Next::default(),
            OrderAction::Say(text) => {
                context.say(&text);
                Next::run(self.scroll())
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
    fn scroll(&self) -> Task<Message> {
        let lines = self.book.lines().len();
        widgets::bring_into_view(LIST, self.book.focus(), lines)
    }
}
