//! What a knot stays when its cord is pulled about: numbers to know it by.

use std::collections::BTreeMap;

use num_bigint::{BigInt, BigUint};

use super::exact::{Polynomial, determinant, normalised, unpacked};
use super::{Corner, Diagram};

impl Diagram {
    /// The determinant from Fox's colouring matrix: twice the upper arc less both lower ones.
    pub fn determinant(&self) -> BigUint {
        // The Alexander matrix at t = −1, up to the signs of its rows.
        self.alexander_minor(&BigInt::from(-1)).into_parts().1
    }

    /// The Alexander polynomial in one variable, every strand oriented the way the cord
    /// travels; from the constant term up, up to sign and powers of t.
    pub fn alexander(&self) -> Polynomial {
        // The terms of a row have coefficients that add up to 4 in size, those of a minor to at
        // most 4 to the number of rows.
        let bits = 2 * self.crossings.len() + 2;
        normalised(unpacked(
            self.alexander_minor(&(BigInt::from(1) << bits)),
            bits,
        ))
    }

    /// The first minor of the Alexander matrix at this `t`. One row a crossing, one column an
    /// arc: (1 − t) upper + t left − right = 0, left and right of one who walks along the upper
    /// cord (R. H. Fox, *A quick trip through knot theory*, 1962; the form from memory).
    fn alexander_minor(&self, t: &BigInt) -> BigInt {
        let count = self.crossings.len();
        let mut over = vec![0; count];
        let mut under = vec![(0, 0); count];
        let mut arcs = 0;
        for strand in &self.strands {
            let goes_under =
                |at: usize| self.crossings[strand[at].crossing].rising_over != strand[at].rising;
            // Start just after the strand has gone under, so that an arc begins there.
            let Some(start) = (0..strand.len()).find(|&at| goes_under(at)) else {
                // It lies on top of all others and can be lifted off.
                return BigInt::ZERO;
            };
            let first_arc = arcs;
            for step in 1..=strand.len() {
                let at = (start + step) % strand.len();
                let crossing = strand[at].crossing;
                if !goes_under(at) {
                    over[crossing] = arcs;
                    continue;
                }
                let next = if step == strand.len() {
                    first_arc
                } else {
                    arcs + 1
                };
                under[crossing] = (arcs, next);
                arcs += 1;
            }
        }
        let mut rows = vec![vec![BigInt::ZERO; arcs]; count];
        for (crossing, row) in rows.iter_mut().enumerate() {
            let (comes, goes) = under[crossing];
            // A falling cord comes from the left of a rising one, a rising from the right.
            let (left, right) = if self.crossings[crossing].rising_over {
                (comes, goes)
            } else {
                (goes, comes)
            };
            row[over[crossing]] += 1 - t;
            row[left] += t;
            row[right] -= 1;
        }
        rows.pop();
        for row in &mut rows {
            row.pop();
        }
        determinant(rows)
    }

    /// The determinant by another road: faces coloured like a chessboard, and Goeritz's matrix
    /// of the faces of one colour (L. Goeritz, *Math. Z.* 36 (1933) 647–654). For a knot woven
    /// over and under by turns it counts the spanning trees of the faces' graph.
    pub fn determinant_by_faces(&self, odd_faces: bool) -> BigUint {
        let mut numbers = BTreeMap::new();
        let mut joins = Vec::new();
        for (index, crossing) in self.crossings.iter().enumerate() {
            // The faces beside a crossing lie at its own height, those above and below a step
            // off: so the parity of the height is a chessboard colouring.
            let beside = (crossing.height % 2 != 0) == odd_faces;
            let corners = if beside {
                [Corner::Left, Corner::Right]
            } else {
                [Corner::Top, Corner::Bottom]
            };
            let [one, other] = corners.map(|corner| {
                let next = numbers.len();
                *numbers.entry(self.face(index, corner)).or_insert(next)
            });
            joins.push((
                one,
                other,
                if crossing.rising_over == beside {
                    1
                } else {
                    -1
                },
            ));
        }
        let mut matrix = vec![vec![BigInt::ZERO; numbers.len()]; numbers.len()];
        for (one, other, sign) in joins {
            matrix[one][other] -= sign;
            matrix[other][one] -= sign;
            matrix[one][one] += sign;
            matrix[other][other] += sign;
        }
        matrix.pop();
        for row in &mut matrix {
            row.pop();
        }
        determinant(matrix).into_parts().1
    }

    /// Right-handed crossings less left-handed ones.
    pub fn writhe(&self) -> i64 {
        let signs = self
            .crossings
            .iter()
            .map(|crossing| if crossing.rising_over { -1 } else { 1 });
        signs.sum()
    }
}
