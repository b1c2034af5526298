//! Signals that end the tie as the key for leaving does: it is saved, and the terminal is put back.

use std::sync::mpsc::Sender;

use super::input::TerminalEvent;

/// Has the tie left when the system asks the program to end. Asked twice, it ends at once.
#[cfg(unix)]
pub(super) fn listen(tell: &Sender<TerminalEvent>) {
    use std::sync::Arc;
    use std::sync::atomic::AtomicBool;
    use std::thread;

    use signal_hook::consts::{SIGHUP, SIGINT, SIGQUIT, SIGTERM};
    use signal_hook::flag;
    use signal_hook::iterator::Signals;

    const ENDING: [i32; 4] = [SIGHUP, SIGINT, SIGQUIT, SIGTERM];
    let is_ending = Arc::new(AtomicBool::new(false));
    let watched = ENDING.iter().try_for_each(|signal| {
        // In this order the first sets the flag, and only the second finds it set.
        flag::register_conditional_shutdown(*signal, 1, Arc::clone(&is_ending))?;
        flag::register(*signal, Arc::clone(&is_ending)).map(drop)
    });
    let told = tell.clone();
    let started = watched
        .and_then(|()| Signals::new(ENDING))
        .and_then(|mut signals| {
            thread::Builder::new()
                .name("signals".to_owned())
                .spawn(move || {
                    for _ in signals.forever() {
                        if told.send(TerminalEvent::Gone).is_err() {
                            return;
                        }
                    }
                })
        });
    if let Err(error) = started {
        log::warn!("signals end the program without a word: {error}");
    }
}

/// Systems other than Unix end the program by themselves.
#[cfg(not(unix))]
pub(super) fn listen(_: &Sender<TerminalEvent>) {}
