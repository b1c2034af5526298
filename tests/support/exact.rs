//! Exact whole-number algebra: determinants, and polynomials with whole coefficients.

use num_bigint::BigInt;

/// Coefficients from the constant term up.
pub type Polynomial = Vec<BigInt>;

/// The determinant by fraction-free elimination (E. H. Bareiss, *Math. Comp.* 22 (1968)
/// 565–578). That of no rows is 1.
pub fn determinant(mut rows: Vec<Vec<BigInt>>) -> BigInt {
    let mut previous = BigInt::from(1);
    let mut sign = BigInt::from(1);
    for column in 0..rows.len() {
        let nonzero = (column..rows.len()).find(|&row| rows[row][column] != BigInt::ZERO);
        let Some(pivot) = nonzero else {
            return BigInt::ZERO;
        };
        if pivot != column {
            rows.swap(pivot, column);
            sign = -sign;
        }
        let (above, below) = rows.split_at_mut(column + 1);
        let top = &above[column];
        for row in below {
            for entry in column + 1..top.len() {
                row[entry] = (&row[entry] * &top[column] - &row[column] * &top[entry]) / &previous;
            }
        }
        previous.clone_from(&top[column]);
    }
    sign * previous
}

/// The polynomial whose value at 2^`bits` is `value`, when its coefficients are smaller than
/// 2^(`bits` − 1) (Kronecker's substitution).
pub fn unpacked(mut value: BigInt, bits: usize) -> Polynomial {
    let base = BigInt::from(1) << bits;
    let half = BigInt::from(1) << (bits - 1);
    let mut polynomial = Vec::new();
    while value != BigInt::ZERO {
        let mut digit = ((&value % &base) + &base) % &base;
        if digit >= half {
            digit -= &base;
        }
        value = (value - &digit) >> bits;
        polynomial.push(digit);
    }
    polynomial
}

/// The same polynomial up to sign and powers of t: it begins with a positive constant term.
pub fn normalised(mut polynomial: Polynomial) -> Polynomial {
    while polynomial.last() == Some(&BigInt::ZERO) {
        polynomial.pop();
    }
    let zeros = polynomial
        .iter()
        .take_while(|term| **term == BigInt::ZERO)
        .count();
    polynomial.drain(..zeros);
    if polynomial.first().is_some_and(|term| *term < BigInt::ZERO) {
        for term in &mut polynomial {
            *term = -std::mem::take(term);
        }
    }
    polynomial
}

/// The product of two polynomials.
pub fn product(one: &[BigInt], other: &[BigInt]) -> Polynomial {
    let mut product = vec![BigInt::ZERO; (one.len() + other.len()).saturating_sub(1)];
    for (low, a) in one.iter().enumerate() {
        for (high, b) in other.iter().enumerate() {
            product[low + high] += a * b;
        }
    }
    product
}

/// The polynomial with t replaced by t^`power`.
pub fn in_power(polynomial: &[BigInt], power: usize) -> Polynomial {
    let mut spread = vec![BigInt::ZERO; polynomial.len().saturating_sub(1) * power + 1];
    for (term, coefficient) in polynomial.iter().enumerate() {
        spread[term * power] += coefficient;
    }
    spread
}
