//! The tables of all messages that are only spoken.
//!
//! A variant stands for the message whose id is its name in kebab case. Since nothing else can be
//! asked for, and a test holds both tables against the files of messages, a message that does not
//! exist cannot be spoken.

use fluent::FluentArgs;
use std::borrow::Cow;

use strum::{EnumIter, IntoStaticStr};

use super::Detail;

/// What is spoken of a step, and what it is told; what is shown of it is told the same.
pub(super) type Said<'a> = (SpokenMessage, FluentArgs<'a>);

/// A message that is spoken with something put into it, or in another text.
#[derive(Clone, Copy, Debug, PartialEq, Eq, EnumIter, IntoStaticStr)]
#[strum(serialize_all = "kebab-case")]
pub(super) enum SpokenMessage {
    AskCordUnknownSay,
    AskThreadUnknownSay,
    AtOnceSay,
    BeginSay,
    CautionSay,
    CheckOrderSay,
    CheckSay,
    CheckSayCrossing,
    CourseLineSay,
    CourseWeaveSay,
    DetailSay,
    DrawThroughSay,
    FairOpenSay,
    FairSay,
    FairWaySay,
    FinishSay,
    FollowSay,
    GlossaryBightSay,
    GlossaryCrossingSay,
    GlossaryFairSay,
    GlossaryFollowSay,
    GlossaryLeadSay,
    GlossaryLegSay,
    GlossaryNestedSay,
    GlossaryOverUnderSay,
    GlossaryPassSay,
    GlossaryPinSay,
    GlossaryRimSay,
    GlossaryRingSay,
    GlossaryRoundSay,
    GlossaryRowSay,
    GlossarySnugSay,
    GlossaryStaggerSay,
    GlossaryStandingEndSay,
    GlossaryStrandSay,
    GlossaryTubeSay,
    GlossaryTuckSay,
    GlossaryWeaveSay,
    GlossaryWorkingEndSay,
    KeyAloudSay,
    KeyGroupSay,
    KitBoardSay,
    KitCordSay,
    KitKeySay,
    KitPageSay,
    KitPicksSay,
    KitPinsSay,
    KitSheetSay,
    KitStripSay,
    KitTapeSay,
    KitTickSay,
    KitToolSay,
    KitTubeSay,
    LaySayClear,
    LaySayCrossing,
    LaySayLanding,
    LaySayWay,
    LaySayWayOn,
    LengthCmSay,
    LengthFractionSay,
    LengthFtInSay,
    LengthFtSay,
    LengthInFractionSay,
    LengthInSay,
    LengthMSay,
    LengthMmSay,
    LacedSay,
    LaySaySplits,
    LiftSay,
    LogFieldSay,
    PinOfRowSay,
    PlanAnswerSay,
    PlanFieldSay,
    PlanFilterSay,
    QuestionSay,
    RigBoardSay,
    RigClosePinsSay,
    RigCutSay,
    RigNestSay,
    RigNumberSay,
    RigPinsSay,
    RigRowSay,
    RigShortPinsSay,
    RigSpaceSay,
    RigPageSay,
    RigStripSay,
    RigThickObjectSay,
    RigThickTubeSay,
    RigWideRingsSay,
    RiggingWhereSay,
    SettingLanguageSay,
    SettingUnitsSay,
    SettingsSay,
    ShelfEmptySay,
    ShelfSay,
    ShelfTieSay,
    SpeedSay,
    VoiceTrialSay,
    StartEmptySay,
    StartFieldSay,
    StartOfferSay,
    TakeBackSay,
    TakeBackSayClear,
    TakeBackSayCrossing,
    TakeBackSayEnd,
    TypedSay,
    WhereSay,
    WhereTakingUpSay,
    WorkTimeSay,
    WrongSay,
}

/// A message that is spoken as it stands: nothing is put into it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, EnumIter, IntoStaticStr)]
#[strum(serialize_all = "kebab-case")]
pub enum Remark {
    /// The course for beginners appears.
    CourseSay,
    /// All keys of a tie in a terminal are told.
    TieKeysSay,
    /// The second window opens.
    SecondWindowSay,
    /// The second window is closed.
    SecondWindowClosedSay,
    /// The app opens where nothing was ever begun.
    FirstStartSay,
    /// The place that was lost is found.
    FoundSay,
    /// The glossary of the words of the trade appears.
    GlossarySay,
    /// After all keys of a screen were told: how to go on.
    KeysCloseSay,
    /// Where one hears of all keys.
    KeysHintSay,
    /// All keys of a screen are told.
    KeysSay,
    /// All intents were asked for, and what was pressed for them is kept.
    LearnDoneSay,
    /// The screen appears on which keys and pedals get their meaning.
    LearnOpeningSay,
    /// An intent that was asked for keeps the keys and pedals it has.
    LearnSkippedSay,
    /// A finished tie can be logged.
    LogOfferSay,
    /// The form of the log appears.
    LogSay,
    /// Somebody else works at the tie: it is only looked at.
    LookOnlySay,
    /// A step that would have moved on by itself is held.
    PaceHeldSay,
    /// The plan screen appears again, with what was filled in.
    PlanAgainSay,
    /// The plan screen appears.
    PlanSay,
    /// The list of the settings appears.
    SettingsOpeningSay,
    /// There is no leg to take back.
    TakeBackNothingSay,
    /// The form of the log appears in a terminal.
    TieLogSay,
}

impl SpokenMessage {
    /// The id of the message as it is said in this depth.
    pub(super) fn id(self, detail: Detail) -> Cow<'static, str> {
        let id: &'static str = self.into();
        if self.has_depths() {
            Cow::Owned(format!("{id}{}", detail.ending()))
        } else {
            Cow::Borrowed(id)
        }
    }

    /// What the ids of this message and of those shown with it begin with.
    pub(super) fn stem(self) -> &'static str {
        let id: &'static str = self.into();
        id.split_once("-say").map_or(id, |(stem, _)| stem)
    }

    /// Whether it is said in three depths.
    const fn has_depths(self) -> bool {
        matches!(
            self,
            Self::BeginSay
                | Self::CheckSay
                | Self::FairSay
                | Self::FinishSay
                | Self::FollowSay
                | Self::KitBoardSay
                | Self::KitCordSay
                | Self::KitKeySay
                | Self::KitPicksSay
                | Self::KitPinsSay
                | Self::KitSheetSay
                | Self::KitStripSay
                | Self::KitTapeSay
                | Self::KitToolSay
                | Self::KitTubeSay
                | Self::LaySayClear
                | Self::LaySayCrossing
                | Self::LaySayLanding
                | Self::LacedSay
                | Self::PinOfRowSay
                | Self::LaySayWay
                | Self::LaySayWayOn
                | Self::LiftSay
                | Self::RigBoardSay
                | Self::RigClosePinsSay
                | Self::RigCutSay
                | Self::RigNestSay
                | Self::RigNumberSay
                | Self::RigPinsSay
                | Self::RigRowSay
                | Self::RigShortPinsSay
                | Self::RigSpaceSay
                | Self::RigStripSay
                | Self::RigThickObjectSay
                | Self::RigThickTubeSay
                | Self::RigWideRingsSay
        )
    }
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;
    use std::fs;

    use strum::IntoEnumIterator;

    use super::*;
    use crate::words::Words;

    /// The ids in the files of a language that are only spoken.
    fn in_files(tag: &str) -> BTreeSet<String> {
        let files = fs::read_dir(format!("i18n/{tag}")).unwrap();
        let files = files.map(|file| file.unwrap().path());
        let sources = files
            .filter(|path| path.is_file())
            .map(|path| fs::read_to_string(path).unwrap());
        let ids = sources.flat_map(|source| {
            let lines = source.lines().filter(|line| !line.starts_with([' ', '#']));
            let ids = lines.filter_map(|line| line.split_once(" =").map(|(id, _)| id.to_owned()));
            ids.collect::<Vec<_>>()
        });
        ids.filter(|id| id.contains("-say")).collect()
    }

    #[test]
    fn every_language_has_the_spoken_messages_of_the_tables_and_no_others() {
        let remarks = Remark::iter().map(|remark| <&str>::from(remark).to_owned());
        let messages = SpokenMessage::iter()
            .flat_map(|message| Detail::ALL.map(|detail| message.id(detail).into_owned()));
        let tables: BTreeSet<String> = messages.chain(remarks).collect();
        for tag in Words::known() {
            assert_eq!(tables, in_files(&tag.to_string()), "{tag}");
        }
    }

    #[test]
    fn a_message_and_what_is_shown_with_it_share_a_stem() {
        assert_eq!(SpokenMessage::KitTubeSay.stem(), "kit-tube");
        assert_eq!(SpokenMessage::LaySayWayOn.stem(), "lay");
    }
}
