//! What the tyer must know besides the step: a lost voice, a tie not saved, keys gone astray.

use super::saving::Saving;
use crate::files::Teller;
use crate::shelf::{ShelfError, ShelfTrouble};
use crate::voice::VoiceEvent;
use crate::words::{Sentence, Spoken, Words};

/// The notices that hold now.
#[expect(
    clippy::struct_excessive_bools,
    reason = "each holds or not, whatever the others do"
)]
#[derive(Debug, Default)]
pub(super) struct Notices {
    is_voice_lost: bool,
    is_focus_lost: bool,
    pub(super) saving: Saving,
    leaving: Option<Sentence>,
    refused: Option<Sentence>,
    news: Option<Sentence>,
    settings: Option<Sentence>,
    not_awake: Option<Sentence>,
    no_such_voice: Option<Sentence>,
    is_deaf: bool,
    is_paused: bool,
    troubles: Vec<ShelfTrouble>,
}

impl Notices {
    /// Takes in what the voice reports.
    pub fn voice(&mut self, news: &VoiceEvent) {
        match news {
            VoiceEvent::Lost(_) => self.is_voice_lost = true,
            VoiceEvent::Ready => self.is_voice_lost = false,
            _ => {}
        }
    }

    /// Takes in good news, to stand there until the next press.
    pub fn tell(&mut self, news: Sentence) {
        self.news = Some(news);
    }

    /// Takes in that the tyer wants to leave what is not saved, as a sentence.
    pub fn leaving(&mut self, sentence: Sentence) {
        self.leaving = Some(sentence);
    }

    /// A key was pressed: the news was seen.
    pub fn press(&mut self) {
        self.news = None;
        self.leaving = None;
    }

    /// Takes in whether the window has the keys.
    pub fn focus(&mut self, has_focus: bool) {
        self.is_focus_lost = !has_focus;
    }

    /// Takes in whether the tyer wants a pause, and gives whether there was one.
    pub fn paused(&mut self, is_paused: bool) -> bool {
        std::mem::replace(&mut self.is_paused, is_paused)
    }

    /// Whether the tyer has asked for a pause.
    pub const fn is_paused(&self) -> bool {
        self.is_paused
    }

    /// Takes in what is wrong with the settings, as a sentence.
    pub fn settings(&mut self, sentence: Sentence) {
        self.settings = Some(sentence);
    }

    /// Takes in that the screen may go dark, as a sentence, or that it no longer matters.
    pub fn screen_may_go_dark(&mut self, sentence: Option<Sentence>) {
        self.not_awake = sentence;
    }

    /// Takes in that a voice is not there, as a sentence, or that it is no longer wished for.
    pub fn no_such_voice(&mut self, sentence: Option<Sentence>) {
        self.no_such_voice = sentence;
    }

    /// Takes in whether knocks are to be heard and there is no microphone, and gives whether it was so.
    pub fn deaf(&mut self, is_deaf: bool) -> bool {
        std::mem::replace(&mut self.is_deaf, is_deaf)
    }

    /// The words are others now: what was put into the old ones is dropped. What still holds is
    /// told anew by whoever finds it out.
    pub fn reword(&mut self) {
        self.news = None;
        self.leaving = None;
        self.refused = None;
        self.settings = None;
        self.not_awake = None;
        self.no_such_voice = None;
    }

    /// Drops what was found wrong on the shelf before.
    pub fn shelf_anew(&mut self) {
        self.refused = None;
        self.troubles.clear();
    }

    /// Takes in what is found wrong on the shelf, and puts it into these words.
    pub fn noting<'a>(&'a mut self, words: &'a Words) -> Noting<'a> {
        Noting {
            notices: self,
            words,
            said: Spoken::default(),
        }
    }

    /// Takes in what the shelf refused, and gives the sentence for it.
    pub fn refused(&mut self, error: &ShelfError, words: &Words) -> Sentence {
        // The path may be one that was typed.
        log::warn!("{}", error.cause());
        let sentence = words.no_ties(error);
        self.refused = Some(sentence.clone());
        sentence
    }

    /// What a lost voice means, while it is lost.
    pub fn voice_lost(&self, words: &Words) -> Option<Sentence> {
        self.is_voice_lost.then(|| words.notice("voice-lost", &[]))
    }

    /// That the tie is held, while it is.
    pub fn pause(&self, words: &Words) -> Option<Sentence> {
        self.is_paused.then(|| words.notice("paused", &[]))
    }

    /// The sentences to be shown and said besides, the most pressing first.
    pub fn sentences(&self, words: &Words) -> Vec<Sentence> {
        let mut sentences = Vec::new();
        if self.is_focus_lost {
            sentences.push(words.notice("focus-lost", &[]));
        }
        sentences.extend(self.leaving.clone());
        sentences.extend(self.saving.sentence(words));
        sentences.extend(self.news.clone());
        sentences.extend(self.refused.clone());
        sentences.extend(self.settings.clone());
        sentences.extend(self.not_awake.clone());
        sentences.extend(self.no_such_voice.clone());
        if self.is_deaf {
            sentences.push(words.notice("no-microphone", &[]));
        }
        sentences.extend(
            self.troubles
                .iter()
                .map(|trouble| sentence_for(trouble, words)),
        );
        sentences
    }

    /// All of them for the ear, one after the other.
    pub fn say(&self, words: &Words) -> Spoken {
        let sentences = self.sentences(words).into_iter();
        let all = sentences
            .chain(self.pause(words))
            .chain(self.voice_lost(words));
        all.map(Spoken::from).collect()
    }
}

/// Puts what is found wrong on the shelf among the notices.
pub(super) struct Noting<'a> {
    notices: &'a mut Notices,
    words: &'a Words,
    said: Spoken,
}

impl Noting<'_> {
    /// What of it was not told yet, for the ear.
    pub fn said(self) -> Spoken {
        self.said
    }
}

impl Teller<ShelfTrouble> for Noting<'_> {
    fn tell_of(&mut self, troubles: Vec<ShelfTrouble>) {
        for trouble in troubles {
            let sentence = sentence_for(&trouble, self.words);
            let told = &mut self.notices.troubles;
            if !told
                .iter()
                .any(|told| sentence_for(told, self.words) == sentence)
            {
                log::warn!("{}", trouble.noted());
                told.push(trouble);
                self.said = std::mem::take(&mut self.said).then(sentence.spoken());
            }
        }
    }
}

fn sentence_for(trouble: &ShelfTrouble, words: &Words) -> Sentence {
    if trouble.moved_to.is_some() || trouble.copy_used.is_some() {
        words.shelf_trouble(trouble)
    } else {
        words.no_ties(&trouble.error)
    }
}
