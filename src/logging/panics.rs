//! A fault of the program itself.

use std::any::Any;
use std::panic;
use std::thread;

/// Logs every panic from now on. `tell` is called for one in a thread other than the main
/// one: what ends the main thread ends the program, and is told by whoever catches it there.
pub fn log_panics(tell: impl Fn() + Send + Sync + 'static) {
    panic::set_hook(Box::new(move |about| {
        let place = about.location().map(ToString::to_string);
        let thread = thread::current();
        let name = thread.name().unwrap_or("without a name");
        log::error!(
            "fault in thread {name} at {}: {}",
            place.as_deref().unwrap_or("a place not known"),
            text(about.payload()).unwrap_or("no words"),
        );
        log::logger().flush();
        if name != "main" {
            tell();
        }
    }));
}

fn text(cause: &(dyn Any + Send)) -> Option<&str> {
    let written = cause.downcast_ref::<String>().map(String::as_str);
    written.or_else(|| cause.downcast_ref::<&str>().copied())
}
