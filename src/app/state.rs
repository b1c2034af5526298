//! The app: which screen is up, and who hears of what happens.

mod keeping;

use std::time::Instant;

use iced::futures::channel::mpsc::UnboundedReceiver;
use iced::keyboard;
use iced::widget::operation;
use iced::{Element, Event, Subscription, Task, event, window};
use jiff::Timestamp;

use super::desk::{self, Desk, InHand, Inventory};
use super::watch::Watch;
use super::{course, glossary, keys, log, notices, plan, shelf, start, tying};
use crate::guide::{AtOnce, COURSE, Lesson, LessonState, Place, Plan, Script};
use crate::knot::{Hand, Knot, Side, Weave};
use crate::pedal::{Bindings, Intent, Press};
use crate::shelf::{Held, Kept, ShelfError, Tie, TieId};
use crate::voice::News;
use crate::words::{Detail, Words};
pub use keeping::Keeping;

/// The whole state of the app.
pub struct App {
    words: Words,
    /// How much is said of a step outside the course.
    detail: Detail,
    /// How much is told at once.
    at_once: AtOnce,
    desk: Desk,
    bindings: Bindings,
    screen: Screen,
    notices: notices::Notices,
    /// The plan screen as it was left: nothing typed is lost.
    planned: Option<Box<plan::State>>,
    /// The tie that was refused last since it is open elsewhere.
    refused: Option<TieId>,
}

enum Screen {
    Start(start::State),
    Plan(Box<plan::State>),
    Tying(Box<Bench>),
    Course(course::State),
    Glossary(glossary::State),
    Shelf(shelf::State),
    Log(Box<keeping::Desktop>),
}

/// A tie in hand, on the screen and on the shelf.
struct Bench {
    tying: tying::State,
    tie: Tie,
    held: Option<Held>,
    /// Somebody else works at it: nothing is kept.
    looks_only: bool,
    watch: Watch,
}

impl Bench {
    /// Whether everything is done, by this tyer.
    fn may_be_logged(&self) -> bool {
        self.tying.is_done() && !self.looks_only
    }

    /// Notes where the tie stands after a press, and the time it took.
    fn move_from(&mut self, before: Place) {
        let (here, mut worked) = (self.tying.place(), self.tie.worked());
        let onwards = self.tying.script().next(before) == Some(here);
        self.watch
            .press(Instant::now(), onwards, (before, here), &mut worked);
        self.tie.stand_at(here);
        self.tie.set_worked(&worked);
    }
}

/// What happens.
#[derive(Debug)]
pub enum Message {
    /// A key that no widget took.
    Key(keyboard::Event),
    /// The start screen.
    Start(start::Message),
    /// The plan screen.
    Plan(plan::Message),
    /// The course.
    Course(course::Message),
    /// How far the tyer is with the course.
    Lessons(Result<[LessonState; COURSE.len()], ShelfError>),
    /// The glossary.
    Glossary(glossary::Chosen),
    /// The voice has something to report.
    Voice(News),
    /// A tie was saved, or was not.
    Kept(Kept),
    /// The shelf was looked through.
    Shelf(Result<Inventory, ShelfError>),
    /// A tie is in hand. `true`: it was taken up again.
    InHand(Box<Result<InHand, ShelfError>>, bool),
    /// The shelf screen and the log.
    Keeping(Keeping),
    /// The window has or has lost the keys.
    Focus(bool),
    /// The window is to be closed.
    Close,
}

/// News from threads that are not the window's.
#[derive(Debug)]
pub enum FromOutside {
    /// From the voice.
    Voice(News),
    /// From the keeper.
    Kept(Kept),
    /// There is no shelf to keep ties on.
    NoShelf(ShelfError),
}

impl Message {
    /// A text typed into a field of the start screen's form.
    pub fn typed(field: start::Field, text: &str) -> Self {
        Self::Start(start::Message::Typed(field, text.to_owned()))
    }

    /// A text typed into a field of the plan screen's form.
    pub fn planned(field: plan::Field, text: &str) -> Self {
        Self::Plan(plan::Message::Typed(field, text.to_owned()))
    }

    /// A text typed into the line of the shelf screen.
    pub fn typed_on_shelf(text: &str) -> Self {
        Self::Keeping(Keeping::Shelf(shelf::Message::Typed(text.to_owned())))
    }

    /// A text typed into a field of the log's form.
    pub fn typed_in_log(field: log::Field, text: &str) -> Self {
        Self::Keeping(Keeping::Log(log::Message::Typed(field, text.to_owned())))
    }
}

impl App {
    /// The app at its beginning: on `plan`, begun, if there is one, or else on the start
    /// screen.
    pub fn new(
        words: Words,
        desk: Desk,
        plan: Option<Plan>,
        outside: UnboundedReceiver<FromOutside>,
    ) -> (Self, Task<Message>) {
        let app = Self {
            detail: words.detail(),
            at_once: AtOnce::default(),
            words,
            desk,
            bindings: Bindings::default(),
            screen: Screen::Start(start::State::default()),
            notices: notices::Notices::default(),
            planned: None,
            refused: None,
        };
        let listen = Task::run(outside, |news| match news {
            FromOutside::Voice(news) => Message::Voice(news),
            FromOutside::Kept(kept) => Message::Kept(kept),
            FromOutside::NoShelf(error) => Message::Shelf(Err(error)),
        });
        let open = match plan {
            Some(plan) => app.begin(new_tie(&plan)),
            None => app.look_through(),
        };
        (app, Task::batch([listen, open]))
    }

    /// The title of the window.
    pub fn title(&self) -> String {
        let name = self.words.plainly("app-title", &[]);
        match &self.screen {
            Screen::Start(_)
            | Screen::Plan(_)
            | Screen::Course(_)
            | Screen::Glossary(_)
            | Screen::Shelf(_)
            | Screen::Log(_) => name,
            Screen::Tying(bench) => {
                format!(
                    "{} – {name}",
                    self.words.tie_line(bench.tying.script().plan())
                )
            }
        }
    }

    /// What the app listens to.
    pub fn subscription(&self) -> Subscription<Message> {
        Subscription::batch([
            keyboard::listen().map(Message::Key),
            window::close_requests().map(|_| Message::Close),
            event::listen_with(|event, status, _| match event {
                // A text field takes this one for itself; leaving is the screen's affair too.
                Event::Keyboard(event) if keys::is_escape(&event) => {
                    (status == event::Status::Captured).then_some(Message::Key(event))
                }
                Event::Window(window::Event::Focused) => Some(Message::Focus(true)),
                Event::Window(window::Event::Unfocused) => Some(Message::Focus(false)),
                _ => None,
            }),
        ])
    }

    /// Takes in what happened.
    pub fn update(&mut self, message: Message) -> Task<Message> {
        match message {
            Message::Key(event) => self.key(&event),
            Message::Start(message) => match &mut self.screen {
                Screen::Start(start) => {
                    let action = start.update(message, &self.words);
                    self.follow(action)
                }
                _ => Task::none(),
            },
            Message::Plan(message) => match &mut self.screen {
                Screen::Plan(plan) => {
                    let action = plan.update(message, &self.words);
                    self.follow_plan(action)
                }
                _ => Task::none(),
            },
            Message::Course(message) => match &mut self.screen {
                Screen::Course(course) => {
                    let action = course.update(message);
                    self.follow_course(action)
                }
                _ => Task::none(),
            },
            // The tyer may have pressed on meanwhile.
            Message::Lessons(_) if !matches!(self.screen, Screen::Start(_)) => Task::none(),
            Message::Lessons(states) => {
                let states = states.unwrap_or_else(|error| {
                    self.notices.refused(&error, &self.words);
                    Default::default()
                });
                let course = course::State::new(states);
                self.desk.voice.say(&course.say(&self.words));
                self.screen = Screen::Course(course);
                Task::none()
            }
            Message::Glossary(chosen) => match &mut self.screen {
                Screen::Glossary(glossary) => {
                    let action = glossary.update(chosen);
                    self.follow_glossary(action)
                }
                _ => Task::none(),
            },
            Message::Keeping(message) => self.keeping(message),
            Message::Voice(news) => {
                self.notices.voice(&news);
                Task::none()
            }
            Message::Kept(kept) => {
                let news = self.notices.kept(&kept, &self.words);
                // Who only hears has to hear it; the step comes again after it.
                if let (Some(news), Screen::Tying(bench)) = (news, &self.screen) {
                    self.desk
                        .voice
                        .say(&format!("{news} {}", bench.tying.say()));
                }
                Task::none()
            }
            Message::Shelf(found) => {
                self.shelve(found);
                Task::none()
            }
            Message::InHand(found, is_again) => self.in_hand(*found, is_again),
            Message::Focus(has_focus) => {
                self.notices.focus(has_focus);
                // Who is at another window is not at the tie.
                if let (Screen::Tying(bench), false) = (&mut self.screen, has_focus) {
                    bench.watch.rest();
                }
                Task::none()
            }
            Message::Close => self.close(),
        }
    }

    /// The window.
    pub fn view(&self) -> Element<'_, Message> {
        let notices = self.notices.sentences(&self.words);
        match &self.screen {
            Screen::Start(start) => start.view(&self.words, notices).map(Message::Start),
            Screen::Plan(plan) => plan.view(&self.words, notices).map(Message::Plan),
            Screen::Course(course) => course.view(&self.words, notices).map(Message::Course),
            Screen::Glossary(glossary) => {
                glossary.view(&self.words, notices).map(Message::Glossary)
            }
            Screen::Tying(bench) => {
                let mut notices = notices;
                if bench.looks_only {
                    notices.insert(0, self.words.plainly("look-only", &[]));
                }
                bench.tying.view(&self.words, notices)
            }
            Screen::Shelf(shelf) => shelf
                .view(&self.words, notices)
                .map(|message| Message::Keeping(Keeping::Shelf(message))),
            Screen::Log(desktop) => desktop
                .form
                .view(&self.words, notices)
                .map(|message| Message::Keeping(Keeping::Log(message))),
        }
    }

    fn key(&mut self, event: &keyboard::Event) -> Task<Message> {
        if keys::is_ctrl(event, "q") {
            return self.close();
        }
        let Some(press) = keys::press(event) else {
            return Task::none();
        };
        self.notices.press();
        let intent = self.bindings.intent(&press);
        match &mut self.screen {
            Screen::Start(start) => {
                let action = start.press(&press, intent, &self.words);
                self.follow(action)
            }
            Screen::Plan(plan) => {
                let action = plan.press(&press, intent, &self.words);
                self.follow_plan(action)
            }
            Screen::Course(course) => {
                let action = course.press(&press, intent, &self.words);
                self.follow_course(action)
            }
            Screen::Glossary(glossary) => {
                let action = glossary.press(&press, intent);
                self.follow_glossary(action)
            }
            Screen::Tying(bench) => {
                if intent.is_none() && press.key.eq_ignore_ascii_case("l") && bench.may_be_logged()
                {
                    let tie = bench.tie.clone();
                    return self.open_form(tie);
                }
                if let Some(intent) = intent {
                    return self.press(intent);
                }
                self.adjust(&press);
                Task::none()
            }
            Screen::Shelf(_) | Screen::Log(_) => self.press_keeping(&press, intent),
        }
    }

    /// A press on the tying screen.
    fn press(&mut self, intent: Intent) -> Task<Message> {
        let Screen::Tying(bench) = &mut self.screen else {
            return Task::none();
        };
        let before = bench.tying.place();
        match bench.tying.press(intent, &self.words) {
            tying::Action::Moved => {
                bench.move_from(before);
                self.desk.voice.say(bench.tying.say());
                if !bench.looks_only {
                    self.desk.keep(&bench.tie);
                }
            }
            tying::Action::Again if intent == Intent::Next && bench.may_be_logged() => {
                let offer = self.words.plainly("log-offer-say", &[]);
                let say = bench.tying.say();
                self.desk.voice.say(&format!("{say} {offer}"));
            }
            tying::Action::Again => self.desk.voice.say(bench.tying.say()),
            tying::Action::Say(sentence) => self.desk.voice.say(&sentence),
            tying::Action::Leave => return self.leave(),
        }
        Task::none()
    }

    /// A key of the tying screen that changes how much is told: 1, 2 and 3 for the depth, square
    /// brackets for the crossings told at once. The place stays.
    fn adjust(&mut self, press: &Press) {
        let Screen::Tying(bench) = &mut self.screen else {
            return;
        };
        if press.is_repeat {
            return;
        }
        let at_once = bench.tying.script().at_once();
        let said = match press.key.as_str() {
            "1" | "2" | "3" => {
                let depths = Detail::ALL.into_iter().zip(["1", "2", "3"]);
                for (detail, _) in depths.filter(|(_, key)| *key == press.key) {
                    self.words.set_detail(detail);
                    // A lesson is taught; what is chosen in it is for it alone.
                    if bench.tie.lesson().is_none() {
                        self.detail = detail;
                    }
                }
                bench.tying.retell(at_once, &self.words);
                self.words.say_detail()
            }
            "[" | "]" => {
                let at_once = if press.key == "[" {
                    at_once.less()
                } else {
                    at_once.more()
                };
                self.at_once = at_once;
                bench.tying.retell(at_once, &self.words);
                self.words.say_at_once(at_once)
            }
            _ => return,
        };
        bench.tie.stand_at(bench.tying.place());
        if !bench.looks_only {
            self.desk.keep(&bench.tie);
        }
        self.desk
            .voice
            .say(&format!("{said} {}", bench.tying.say()));
    }

    /// Does what the start screen asks for.
    fn follow(&mut self, action: start::Action) -> Task<Message> {
        match action {
            start::Action::None => Task::none(),
            start::Action::Complain(sentence) => {
                self.desk.voice.say(&sentence);
                Task::none()
            }
            // Focusing a field that takes no text leaves every text field unfocused.
            start::Action::Focus(field) => match field {
                Some(field) => Task::batch([
                    operation::focus(start::id(field)),
                    operation::select_all(start::id(field)),
                ]),
                None => operation::focus(start::id(start::Field::Begin)),
            },
            start::Action::Begin(plan) => self.begin(new_tie(&plan)),
            start::Action::Plan(hand, side) => self.open_plan(hand, side),
            start::Action::Course => match self.desk.shelf.clone() {
                Some(shelf) => Task::future(async move { Message::Lessons(desk::lessons(&shelf)) }),
                None => Task::done(Message::Lessons(Ok(Default::default()))),
            },
            start::Action::Glossary => {
                let glossary = glossary::State::new(&self.words);
                self.desk.voice.say(&glossary.say(&self.words));
                self.screen = Screen::Glossary(glossary);
                Task::none()
            }
            start::Action::TakeUp(waiting) => self.take_up(waiting.tie.id().clone()),
            start::Action::Shelf => self.open_shelf(),
        }
    }

    /// Does what the plan screen asks for.
    fn follow_plan(&mut self, action: plan::Action) -> Task<Message> {
        match action {
            plan::Action::None => Task::none(),
            plan::Action::Say(sentence) => {
                self.desk.voice.say(&sentence);
                Task::none()
            }
            plan::Action::Focus(field, sentence) => {
                self.desk.voice.say(&sentence);
                focus_plan(field)
            }
            plan::Action::Find(asked, question) => {
                let shelf = self.desk.shelf.clone();
                Task::future(async move {
                    let question = desk::taught(shelf.as_ref(), *question);
                    let outcome = plan::Outcome::of(Box::new(question));
                    Message::Plan(plan::Message::Found(asked, outcome))
                })
            }
            plan::Action::Begin(plan) => self.begin(new_tie(&plan)),
            plan::Action::Leave => self.leave(),
        }
    }

    /// Goes to the plan screen, as it was left.
    fn open_plan(&mut self, hand: Hand, side: Side) -> Task<Message> {
        let mut plan = self.planned.take().unwrap_or_default();
        plan.work(hand, side);
        self.desk.voice.say(&plan.say(&self.words));
        let focus = focus_plan(plan.focus());
        self.screen = Screen::Plan(plan);
        let Some(rack) = self.desk.rack.clone() else {
            return focus;
        };
        let read = Task::future(async move { Message::Plan(plan::Message::Rack(rack.read())) });
        Task::batch([focus, read])
    }

    /// Does what the course asks for.
    fn follow_course(&mut self, action: course::Action) -> Task<Message> {
        match action {
            course::Action::None => {}
            course::Action::Say(sentence) => self.desk.voice.say(&sentence),
            course::Action::Leave => return self.leave(),
            course::Action::Begin(Lesson {
                number,
                leads,
                bights,
                passes,
            }) => {
                let knot = Knot::new(leads, bights, Weave::default());
                let plan =
                    knot.and_then(|knot| Plan::new(knot, passes, Side::default(), Hand::default()));
                match plan {
                    Ok(plan) => {
                        let tie = new_tie(&plan).for_lesson(number);
                        return self.begin(tie);
                    }
                    Err(error) => self.desk.voice.say(&self.words.knot_error(&error)),
                }
            }
        }
        Task::none()
    }

    /// Does what the glossary asks for.
    fn follow_glossary(&mut self, action: glossary::Action) -> Task<Message> {
        match action {
            glossary::Action::None => {}
            glossary::Action::Say(sentence) => self.desk.voice.say(&sentence),
            glossary::Action::Leave => return self.leave(),
        }
        Task::none()
    }

    /// Puts a new tie on the shelf and in hand.
    fn begin(&self, tie: Tie) -> Task<Message> {
        let shelf = self.desk.shelf.clone();
        Task::future(async move {
            Message::InHand(Box::new(Ok(desk::begin(shelf.as_ref(), tie))), false)
        })
    }

    fn in_hand(&mut self, found: Result<InHand, ShelfError>, is_again: bool) -> Task<Message> {
        let InHand {
            tie,
            held,
            troubles,
            error,
            looks_only,
            pace,
        } = match found {
            Ok(in_hand) => in_hand,
            Err(error) => {
                if let ShelfError::InUse { id } = &error {
                    self.refused = Some(id.clone());
                }
                let sentence = self.notices.refused(&error, &self.words);
                self.desk.voice.say(&sentence);
                return Task::none();
            }
        };
        let is_taught = tie.lesson().is_some();
        self.words.set_detail(if is_taught {
            Detail::Teach
        } else {
            self.detail
        });
        let script = Script::new(tie.plan(), self.at_once);
        let place = tie.stands_at().unwrap_or_else(|| script.first());
        let mut tying = tying::State::new(script, place, &self.words);
        tying.set_pace(pace);
        self.notices.shelf(troubles);
        self.refused = None;
        if error.is_some() {
            self.desk.keep(&tie);
        }
        let say = tying.say();
        if is_again {
            let where_it_stands = self.words.say_taking_up(tying.script(), tying.place());
            let looking = if looks_only {
                self.words.plainly("look-only-say", &[])
            } else {
                String::new()
            };
            let all = format!("{looking} {where_it_stands} {say}");
            self.desk.voice.say(all.trim());
        } else if let Some(lesson) = tie.lesson() {
            self.desk
                .voice
                .say(&format!("{} {say}", self.words.lesson_idea(lesson)));
        } else {
            self.desk.voice.say(say);
        }
        self.put_away();
        self.keep_plan();
        self.screen = Screen::Tying(Box::new(Bench {
            tying,
            tie,
            held,
            looks_only,
            watch: Watch::begin(Instant::now()),
        }));
        Task::none()
    }

    /// Back to the start screen, with what is on the shelf by then.
    fn leave(&mut self) -> Task<Message> {
        self.put_away();
        self.keep_plan();
        self.screen = Screen::Start(start::State::default());
        self.look_through()
    }

    /// Keeps what was typed on the plan screen, to be there when it is come back to.
    fn keep_plan(&mut self) {
        if let Screen::Plan(plan) = &mut self.screen {
            self.planned = Some(std::mem::take(plan));
        }
    }

    fn put_away(&mut self) {
        let bench = match &mut self.screen {
            Screen::Tying(bench) => Some(bench),
            Screen::Log(desktop) => desktop.bench.as_mut(),
            _ => None,
        };
        if let Some(bench) = bench {
            self.desk.put_away(bench.held.take());
        }
    }

    fn look_through(&self) -> Task<Message> {
        let (shelf, keeper) = (self.desk.shelf.clone(), self.desk.keeper.clone());
        match shelf {
            Some(shelf) => Task::future(async move {
                // What was asked to be saved a moment ago belongs into the list.
                if let Some(keeper) = keeper {
                    keeper.flush(desk::LAST_SAVE);
                }
                Message::Shelf(desk::inventory(&shelf, Timestamp::now()))
            }),
            None => Task::done(Message::Shelf(Ok(Inventory::default()))),
        }
    }

    fn shelve(&mut self, found: Result<Inventory, ShelfError>) {
        let Screen::Start(start) = &mut self.screen else {
            return;
        };
        match found {
            Ok(Inventory { waiting, troubles }) => {
                self.notices.shelf(troubles);
                *start = start::State::new(waiting);
            }
            Err(error) => {
                start.be_ready();
                self.notices.refused(&error, &self.words);
            }
        }
        let notices = self.notices.sentences(&self.words).join(" ");
        self.desk
            .voice
            .say(format!("{notices} {}", start.say(&self.words)).trim());
    }

    fn close(&mut self) -> Task<Message> {
        self.put_away();
        self.desk.close();
        iced::exit()
    }
}

/// A tie of a plan, before its first step.
fn new_tie(plan: &Plan) -> Tie {
    let first = Script::new(plan.clone(), AtOnce::default()).first();
    Tie::of(plan, first)
}

fn focus_plan(field: plan::Field) -> Task<Message> {
    Task::batch([
        operation::focus(plan::id(field)),
        operation::select_all(plan::id(field)),
    ])
}
