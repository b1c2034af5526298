//! What time it is.

use std::time::SystemTime;

use jiff::{SignedDuration, Timestamp};

/// A thousand years, in hours.
const ROOM: SignedDuration = SignedDuration::from_hours(1000 * 8766);

/// Now, as far as a document can say it. A clock set past the year 9999, or before −9999, is at that end
/// of time, less so much that whatever is saved after it can still be later.
pub fn now() -> Timestamp {
    of(SystemTime::now())
}

fn of(time: SystemTime) -> Timestamp {
    Timestamp::try_from(time).unwrap_or_else(|_| {
        if time < SystemTime::UNIX_EPOCH {
            Timestamp::MIN
        } else {
            // Nothing but a span with calendar units can fail here.
            let end = Timestamp::MAX.saturating_sub(ROOM);
            end.unwrap_or(Timestamp::MAX)
        }
    })
}

#[cfg(test)]
mod tests {
    use std::time::Duration;

    use super::*;

    #[test]
    fn a_clock_beyond_the_end_of_time_leaves_room_for_what_comes_later() {
        let far = Duration::from_secs(400_000_000_000);
        let end = of(SystemTime::UNIX_EPOCH + far);
        let later = end.saturating_add(SignedDuration::from_millis(1)).unwrap();
        assert!(later > end && end > of(SystemTime::UNIX_EPOCH + far / 2));
        assert_eq!(of(SystemTime::UNIX_EPOCH - far), Timestamp::MIN);
        assert_eq!(of(SystemTime::UNIX_EPOCH), Timestamp::UNIX_EPOCH);
    }
}
