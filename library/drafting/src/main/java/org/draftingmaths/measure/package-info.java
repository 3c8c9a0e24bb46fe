/**
 * Body measurements: what each one means, what a set of them is, how missing ones are filled, and the declared ease.
 *
 * <p>A draft is a function of measurements, so a measurement has to mean one thing. Here is the way through the package:
 *
 * <ul>
 *   <li>{@link org.draftingmaths.measure.Landmark}: the points and levels of the body between which the tape runs.
 *   <li>{@link org.draftingmaths.measure.Measure}: the measures, each with its two landmarks, whether the tape runs round,
 *       along or straight, and the range that is plausible.
 *   <li>{@link org.draftingmaths.measure.Measurements}: one figure's set. Every value carries its
 *       {@link org.draftingmaths.measure.Provenance}: measured, or proportioned by a named rule.
 *   <li>{@link org.draftingmaths.measure.ProportionRule} and {@link org.draftingmaths.measure.ProportionRules}: how a
 *       missing measure is filled. Nothing else ever fills one.
 *   <li>{@link org.draftingmaths.measure.Consistency}: findings where two plausible measures hardly belong to one body.
 *   <li>{@link org.draftingmaths.measure.Ease}: how much longer round the garment is than the body, at bust, waist and
 *       hip. Ease belongs to a garment, not to a body, so it is not part of the set.
 *   <li>{@link org.draftingmaths.measure.Wearer}: whether the wearer was declared to be an adult.
 * </ul>
 *
 * <pre>{@code
 * Measurements figure = Measurements.of("size 38", Wearer.ADULT)
 *         .with(Measure.BUST, Length.cm(88))
 *         .with(Measure.WAIST, Length.cm(72))
 *         .with(Measure.HIP, Length.cm(97))
 *         .filledBy(ProportionRules.TORSO)
 *         .require(Measure.TORSO_BLOCK);
 * figure.length(Measure.NECK);       // 370 mm
 * figure.provenance(Measure.NECK);   // proportioned, by the rule "neck from bust"
 * }</pre>
 *
 * <p>A value that cannot be a body's is refused with an {@code IllegalArgumentException} that names the measure and the
 * accepted range. The landmarks follow the concepts of ISO 8559-1 (garment construction and anthropometric surveys, body
 * dimensions), in words of our own; names in the list of ISO 8559:1989 are given with the measures.
 */
package org.draftingmaths.measure;
