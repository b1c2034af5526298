//! Whoever is told what is wrong with what was read, and remembers it.

use marlinspeak::files::{Reading, Teller};

struct Listener<X>(Vec<X>);

impl<X> Teller<X> for Listener<X> {
    fn tell_of(&mut self, troubles: Vec<X>) {
        self.0.extend(troubles);
    }
}

/// What was read, and everything that is told of it.
pub fn told_of<T, X>(reading: Reading<T, X>) -> (T, Vec<X>) {
    let mut listener = Listener(Vec::new());
    let value = reading.hand_on(&mut listener);
    (value, listener.0)
}
