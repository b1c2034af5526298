//! What time it is.

use std::time::SystemTime;

use jiff::Timestamp;

/// Now, as far as a document can say it: a clock set past the year 9999, or before −9999, is at that
/// end of time.
pub fn now() -> Timestamp {
    of(SystemTime::now())
}

fn of(time: SystemTime) -> Timestamp {
    let end = if time < SystemTime::UNIX_EPOCH {
        Timestamp::MIN
    } else {
        Timestamp::MAX
    };
    Timestamp::try_from(time).unwrap_or(end)
}

#[cfg(test)]
mod tests {
    use std::time::Duration;

    use super::*;

    #[test]
    fn a_clock_beyond_the_end_of_time_is_at_its_end() {
        let far = Duration::from_secs(400_000_000_000);
        assert_eq!(of(SystemTime::UNIX_EPOCH + far), Timestamp::MAX);
        assert_eq!(of(SystemTime::UNIX_EPOCH - far), Timestamp::MIN);
        assert_eq!(of(SystemTime::UNIX_EPOCH), Timestamp::UNIX_EPOCH);
    }
}
