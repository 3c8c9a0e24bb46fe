/**
 * Lengths and angles at the human border: read, rounded once and written in inches with fractions and in centimetres.
 *
 * <p>Inside the library a length is a {@code double} in millimetres and an angle a {@code double} in radians. This
 * package is where such a number meets a person. 1 in is 25.4 mm exactly (international yard and pound agreement of
 * 1959).
 *
 * <ul>
 *   <li>{@link org.draftingmaths.unit.Length}: one length. Use it for what a person measured or will measure. It reads
 *       the written forms of the trade and refuses the rest, saying what it read and what it would have accepted.
 *   <li>{@link org.draftingmaths.unit.Steps}: the smallest marks of the tape, by default 1/8 in and 0.1 cm. The only
 *       place where a length is rounded, and only when asked.
 *   <li>{@link org.draftingmaths.unit.Mates}: two edges sewn together print alike when they match within a tolerance.
 *   <li>{@link org.draftingmaths.unit.PrintedSum}: a total printed from the true total, with a remark where the printed
 *       parts do not add up to it.
 *   <li>{@link org.draftingmaths.unit.PairCheck}: judges a published pair of an inch value and a centimetre value.
 *   <li>{@link org.draftingmaths.unit.Angles}: angles as degrees in text.
 * </ul>
 *
 * <h2>How a tie is decided</h2>
 *
 * A length that lies halfway between two marks goes to the mark farther from zero (half up, on the magnitude). Whether
 * it lies halfway is decided in decimal, on the number rounded to 15 significant digits, because a decimal such as
 * 20.6375 mm, which is 6.5 eighths of an inch, has no exact binary form and would fall to either side by chance. Every
 * decimal of up to 15 digits keeps its value under this rule; the price is that a length within 1e-12 mm of a tie (for
 * lengths below a metre) is taken to be the tie.
 *
 * <p>Nothing here depends on the default locale or on the time zone. All types are immutable and safe to share between
 * threads.
 */
package org.draftingmaths.unit;
