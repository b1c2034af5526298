//! Time and money in words.
//!
//! Like a length, a time of work is one argument of a message that is seen and heard: it is told when
//! the message is looked up.

use std::borrow::Cow;

use fluent::types::{FluentNumber, FluentNumberOptions, FluentType};
use fluent::{FluentArgs, FluentValue, fluent_args};

use super::Words;
use super::channel::Channel;
use super::inches::whole;
use super::spoken_messages::SpokenMessage;
use crate::guide::{Labour, Phase};

impl Words {
    /// What the work on a tie takes, as it is printed.
    pub fn labour(&self, labour: &Labour) -> String {
        let pace = if labour.is_own_pace { "own" } else { "usual" };
        let args = fluent_args! {
            "tucks" => labour.tucks,
            "other_tucks" => labour.tucks_begun_with_over.unwrap_or(0), "time" => self.time(labour.minutes), "pace" => pace,
            "cost" => cost(labour.cost),
        };
        self.text("labour", &args)
    }

    /// The name of a part of the job, as short as can be.
    pub fn job_part(&self, phase: Phase) -> String {
        self.text("job-part", &fluent_args! { "part" => phase.name() })
    }

    /// How long the rest of a job takes.
    pub fn time_left(&self, minutes: f64) -> String {
        self.text(
            "job-time-left",
            &fluent_args! { "time" => self.time(minutes) },
        )
    }

    /// A time as it is shown.
    pub(super) fn time(&self, minutes: f64) -> String {
        self.text(SpokenMessage::WorkTimeSay.stem(), &time_args(minutes))
    }

    /// A time as it is said.
    pub(super) fn say_time(&self, minutes: f64) -> String {
        self.spoken(SpokenMessage::WorkTimeSay, &time_args(minutes))
            .into()
    }

    /// A time of work for the ear or for the eye.
    pub(super) fn work_time(&self, time: WorkTime, channel: Channel) -> String {
        match channel {
            Channel::Ear => self.say_time(time.minutes),
            Channel::Eye => self.time(time.minutes),
        }
    }
}

/// A time of work as a message that is seen and heard is told it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct WorkTime {
    minutes: f64,
}

/// Minutes of work for a message that is seen and heard.
pub(super) const fn work_time(minutes: f64) -> WorkTime {
    WorkTime { minutes }
}

/// The time of work that an argument is, if it is one.
pub(super) fn work_time_of(value: &FluentValue) -> Option<WorkTime> {
    match value {
        FluentValue::Custom(custom) => (**custom).as_any().downcast_ref().copied(),
        _ => None,
    }
}

impl FluentType for WorkTime {
    fn duplicate(&self) -> Box<dyn FluentType + Send> {
        Box::new(*self)
    }

    /// Never reached by way of [`Words::text`], which tells times before anything else.
    fn as_string(&self, _: &intl_memoizer::IntlLangMemoizer) -> Cow<'static, str> {
        format!("{} min", self.minutes).into()
    }

    fn as_string_threadsafe(
        &self,
        _: &intl_memoizer::concurrent::IntlLangMemoizer,
    ) -> Cow<'static, str> {
        format!("{} min", self.minutes).into()
    }
}

impl From<WorkTime> for FluentValue<'_> {
    fn from(time: WorkTime) -> Self {
        Self::Custom(Box::new(time))
    }
}

/// Hours and minutes, rounded as such an estimate deserves: to five minutes from half an hour up.
fn time_args(minutes: f64) -> FluentArgs<'static> {
    let step = if minutes < 30.0 { 1.0 } else { 5.0 };
    let minutes = whole((minutes / step).round().max(1.0) * step);
    fluent_args! { "hours" => minutes / 60, "minutes" => minutes % 60 }
}

/// What a tie costs, or that nobody knows.
pub(super) fn cost(cost: Option<f64>) -> FluentValue<'static> {
    cost.map_or_else(|| "none".into(), money)
}

/// An amount of money, in whatever the tyer's prices are in, with its hundredths.
pub(super) fn money(amount: f64) -> FluentValue<'static> {
    let options = FluentNumberOptions {
        minimum_fraction_digits: Some(2),
        ..FluentNumberOptions::default()
    };
    FluentNumber::new((amount * 100.0).round() / 100.0, options).into()
}
