//! What the doctor says.

use fluent::fluent_args;

use super::Words;

impl Words {
    /// The speech service answers: how many voices it has, and how many speak this language.
    pub fn doctor_speech(&self, voices: usize, fitting: usize) -> String {
        let language = self.language_name();
        let args = fluent_args! {
            "voices" => voices, "fitting" => fitting, "language" => language,
        };
        let message = match (voices, fitting) {
            (0, _) => "doctor-speech-no-voices",
            (_, 0) => "doctor-speech-foreign",
            _ => "doctor-speech",
        };
        self.text(message, &args)
    }

    /// So many game controllers and MIDI inputs are plugged in.
    pub fn doctor_pedals(&self, controllers: usize, midi: usize) -> String {
        let args = fluent_args! { "controllers" => controllers, "midi" => midi };
        let message = if controllers + midi == 0 {
            "doctor-pedals-none"
        } else {
            "doctor-pedals"
        };
        self.text(message, &args)
    }

    /// The folder of the ties can be written to: what is free, and what is there.
    pub fn doctor_ties(&self, folder: &str, megabytes: u64, documents: usize) -> String {
        let args = fluent_args! {
            "file" => folder, "megabytes" => megabytes, "documents" => documents,
        };
        self.text("doctor-ties", &args)
    }

    /// There is hardly room for more.
    pub fn doctor_ties_full(&self, folder: &str, megabytes: u64) -> String {
        let args = fluent_args! { "file" => folder, "megabytes" => megabytes };
        self.text("doctor-ties-full", &args)
    }

    /// So many documents cannot be read.
    pub fn doctor_ties_damaged(&self, folder: &str, damaged: usize) -> String {
        let args = fluent_args! { "file" => folder, "damaged" => damaged };
        self.text("doctor-ties-damaged", &args)
    }
}
