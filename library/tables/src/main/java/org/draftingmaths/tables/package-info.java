/**
 * Size charts in, as sets of measurements; sets of measurements, walks, girths, eases and findings out, as Tablesaw tables.
 *
 * <h2>What a chart looks like</h2>
 *
 * A chart is a text file of separated values. Lines that begin with {@code #} are comments, blank lines do not count. The
 * first line that is left names the layout by its first cell:
 *
 * <pre>
 * # measures down, sizes across              # sizes down, measures across
 * measure, unit, 36, 38                      size, bust, waist, back waist length
 * bust,    cm,   84, 88                      unit, cm,   cm,    in
 * waist,   cm,   68, 72                      36,   84,   68,    15 3/4
 * back waist length, in, 15 3/4, 16          38,   88,   72,    16
 * </pre>
 *
 * <p>Measures have the names of {@link org.draftingmaths.measure.Measure#label()}. The unit stands in the column or row
 * named {@code unit}, or is given once for the whole chart ({@link org.draftingmaths.tables.ChartOptions#withUnit}), or
 * stands in every cell ({@code 88 cm}, {@code 34 1/2 in}); it is never guessed, and never stated twice. Values have the forms
 * of {@link org.draftingmaths.unit.Length#parse}.
 *
 * <h2>What is said aloud</h2>
 *
 * <ul>
 *   <li>A decimal comma is refused with its place, unless the chart is declared to have them
 *       ({@link org.draftingmaths.tables.ChartOptions#withDecimalComma}). Read as a number by Tablesaw, {@code 1,5} would be
 *       15 in any locale.
 *   <li>A cell that is empty, {@code NA} or {@code *} is a missing measure, and is listed with its place in
 *       {@link org.draftingmaths.tables.SizeChart#missing()}. Nothing fills it but a named proportion rule, on request.
 *   <li>An unknown measure, a value that no body has, a row with too many or too few cells, a name that stands twice: each is an
 *       {@code IllegalArgumentException} that gives line and column.
 * </ul>
 */
package org.draftingmaths.tables;
