//! Inches as they stand on a rule: whole ones and a fraction in lowest terms.

/// Which way what lies between two marks of a rule is told.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Toward {
    /// By the nearer mark.
    Nearest,
    /// By the longer one.
    Up,
    /// By the shorter one.
    Down,
}

/// What is a mark but for the last bit is that mark.
const BIT: f64 = 1e-6;

impl Toward {
    /// A number of marks.
    pub fn of(self, marks: f64) -> f64 {
        match self {
            Self::Nearest => marks.round(),
            Self::Up => (marks - BIT).ceil(),
            Self::Down => (marks + BIT).floor(),
        }
    }
}

/// Whole inches and a fraction.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct OnARule {
    /// Whole inches.
    pub inches: u32,
    /// Above the line; 0 when there is no fraction.
    pub above: u32,
    /// Below the line: 2, 4 … 64.
    pub below: u32,
}

/// The finest marks that a rule has.
const FINEST: u32 = 64;

impl OnARule {
    /// Inches rounded to marks that are so fine as a bench needs at such a length: 64ths below half an
    /// inch, 32nds up to 3 inches, 16ths up to a foot, eighths beyond.
    pub fn fine(inches: f64, toward: Toward) -> Self {
        let below = match inches {
            ..0.5 => 64,
            ..3.0 => 32,
            ..12.0 => 16,
            _ => 8,
        };
        Self::to(inches, below, toward)
    }

    /// Inches rounded to marks of so many to the inch, a power of 2 up to 64.
    pub fn to(inches: f64, below: u32, toward: Toward) -> Self {
        let (mut above, mut below) = (whole(toward.of(inches * f64::from(below))), below);
        let inches = above / below;
        above %= below;
        while above.is_multiple_of(2) && below > 1 {
            (above, below) = (above / 2, below / 2);
        }
        Self {
            inches,
            above,
            below,
        }
    }

    /// Inches that are exactly on a mark, such as those of what is sold by them.
    pub fn exact(inches: f64) -> Option<Self> {
        let marks = inches * f64::from(FINEST);
        let is_one = (marks - marks.round()).abs() <= 1e-6 && marks >= 1.0;
        is_one.then(|| Self::to(inches, FINEST, Toward::Nearest))
    }
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "casts from floats saturate, and lengths are positive"
)]
pub(super) const fn whole(number: f64) -> u32 {
    number as u32
}

#[cfg(test)]
mod tests {
    use super::*;

    fn told(rule: OnARule) -> (u32, u32, u32) {
        (rule.inches, rule.above, rule.below)
    }

    #[test]
    fn a_fraction_stands_in_lowest_terms() {
        let exact = |inches| OnARule::exact(inches).map(told);
        assert_eq!(exact(0.5), Some((0, 1, 2)));
        assert_eq!(exact(0.375), Some((0, 3, 8)));
        assert_eq!(exact(1.25), Some((1, 1, 4)));
        assert_eq!(exact(5.0 / 64.0), Some((0, 5, 64)));
        assert_eq!(exact(2.0), Some((2, 0, 1)));
        assert_eq!(exact(0.035), None);
    }

    #[test]
    fn marks_are_as_fine_as_a_bench_needs() {
        let fine = |mm: f64| told(OnARule::fine(mm / 25.4, Toward::Nearest));
        // 4 mm is 5/32 within a 64th, and 40 mm is no 1.57 in on a bench.
        assert_eq!(fine(4.0), (0, 5, 32));
        assert_eq!(fine(40.0), (1, 9, 16));
        assert_eq!(fine(42.3), (1, 21, 32));
        assert_eq!(fine(126.0), (4, 15, 16));
        assert_eq!(fine(999.0), (39, 3, 8));
    }

    #[test]
    fn what_must_be_enough_is_rounded_up_and_a_bound_down() {
        let [up, down] =
            [Toward::Up, Toward::Down].map(|toward| told(OnARule::to(1.501, 16, toward)));
        assert_eq!((up, down), ((1, 9, 16), (1, 1, 2)));
        // What is on a mark stays there.
        let on = 1.5 + 1e-9;
        assert_eq!(told(OnARule::to(on, 16, Toward::Up)), (1, 1, 2));
    }
}
