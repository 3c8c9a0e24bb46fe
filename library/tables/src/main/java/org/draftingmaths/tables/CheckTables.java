package org.draftingmaths.tables;

import java.util.List;
import java.util.Locale;
import org.draftingmaths.check.ClosedGirth;
import org.draftingmaths.check.Weights;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Girths;
import org.draftingmaths.piece.LevelLine;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.seam.Walk;
import org.draftingmaths.unit.Steps;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;

/**
 * What a draft measures and what checks found, as Tablesaw tables.
 *
 * <p>True lengths stand in columns in mm; the columns in inches and cm are texts, each rounded once from the true length.
 *
 * <pre>{@code
 * tech.tablesaw.api.Table walked = CheckTables.walks("walks", Walk.all(draft), Steps.DEFAULT);
 * walked.where(walked.doubleColumn("difference mm").isGreaterThan(0.5));
 * }</pre>
 */
public final class CheckTables {

    private CheckTables() {}

    /**
     * One row for each finding, in their order.
     *
     * <p>Columns: {@code severity}, {@code kind}, {@code where}, {@code quantity}, {@code measured}, {@code expected}, {@code off by} and {@code tolerance}
     * (in mm, square mm or radians, as the quantity is), {@code sentence}.
     *
     * @param name the name of the table
     * @param findings the findings
     * @param weights by what their severity is told, for example {@link Weights#COMMON}
     * @param steps the steps to which the sentences round lengths
     * @return the table
     */
    public static Table findings(String name, List<Finding> findings, Weights weights, Steps steps) {
        StringColumn severity = StringColumn.create("severity");
        StringColumn kind = StringColumn.create("kind");
        StringColumn where = StringColumn.create("where");
        StringColumn quantity = StringColumn.create("quantity");
        DoubleColumn measured = DoubleColumn.create("measured");
        DoubleColumn expected = DoubleColumn.create("expected");
        DoubleColumn off = DoubleColumn.create("off by");
        DoubleColumn tolerance = DoubleColumn.create("tolerance");
        StringColumn sentence = StringColumn.create("sentence");
        for (Finding finding : findings) {
            severity.append(weights.of(finding).words());
            kind.append(finding.kind().words());
            where.append(finding.where());
            quantity.append(words(finding.quantity()));
            measured.append(finding.measured());
            expected.append(finding.expected());
            off.append(finding.excess());
            tolerance.append(finding.tolerance());
            sentence.append(finding.sentence(steps));
        }
        return Table.create(name, severity, kind, where, quantity, measured, expected, off, tolerance, sentence);
    }

    private static String words(Quantity quantity) {
        return quantity.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /**
     * One row for each notch interval of each walk, in their order.
     *
     * <p>Columns: {@code seam}, {@code interval} (counted from 1 in the direction of sewing), and in mm, inches and cm each {@code first}
     * (the folded length of the first edge), {@code ease} (what is declared of it), {@code second} and {@code difference} (first less ease
     * less second).
     *
     * @param name the name of the table
     * @param walks the walks, for example {@link Walk#all}
     * @param steps the steps of the printed texts
     * @return the table
     */
    public static Table walks(String name, List<Walk> walks, Steps steps) {
        StringColumn seam = StringColumn.create("seam");
        IntColumn number = IntColumn.create("interval");
        LengthColumns first = LengthColumns.named("first", steps);
        LengthColumns ease = LengthColumns.named("ease", steps);
        LengthColumns second = LengthColumns.named("second", steps);
        LengthColumns difference = LengthColumns.named("difference", steps);
        for (Walk walk : walks) {
            for (Walk.Interval interval : walk.intervals()) {
                seam.append(walk.seam().name());
                number.append(interval.number());
                first.append(interval.first());
                ease.append(interval.surplus());
                second.append(interval.second());
                difference.append(interval.difference());
            }
        }
        Table table = Table.create(name, seam, number);
        List.of(first, ease, second, difference).forEach(lengths -> lengths.addTo(table));
        return table;
    }

    /**
     * One row for each level line of each piece: its closed width, with every dart sewn.
     *
     * <p>Columns: {@code piece}, {@code level}, {@code closed mm}, {@code closed inches}, {@code closed cm}.
     *
     * @param name the name of the table
     * @param draft the draft
     * @param steps the steps of the printed texts
     * @return the table
     */
    public static Table girths(String name, Draft draft, Steps steps) {
        StringColumn piece = StringColumn.create("piece");
        StringColumn level = StringColumn.create("level");
        LengthColumns closed = LengthColumns.named("closed", steps);
        for (Piece each : draft.pieces()) {
            for (LevelLine line : each.levels()) {
                piece.append(each.name());
                level.append(line.name());
                closed.append(Girths.closed(each, line.name()));
            }
        }
        return closed.addTo(Table.create(name, piece, level));
    }

    /**
     * One row for each notch interval that a seam does not sew flat.
     *
     * <p>Columns: {@code seam}, {@code interval}, {@code how}, {@code surplus mm}, {@code surplus inches}, {@code surplus cm} (by how much
     * the first edge is longer; negative when it is stretched), {@code reason}.
     *
     * @param name the name of the table
     * @param draft the draft
     * @param steps the steps of the printed texts
     * @return the table
     */
    public static Table eases(String name, Draft draft, Steps steps) {
        StringColumn seam = StringColumn.create("seam");
        IntColumn interval = IntColumn.create("interval");
        StringColumn how = StringColumn.create("how");
        LengthColumns surplus = LengthColumns.named("surplus", steps);
        StringColumn reason = StringColumn.create("reason");
        for (Seam each : draft.seams()) {
            for (Seam.Held held : each.held()) {
                seam.append(each.name());
                interval.append(held.interval());
                how.append(held.how().name().toLowerCase(Locale.ROOT));
                surplus.append(held.surplus());
                reason.append(held.reason());
            }
        }
        return surplus.addTo(Table.create(name, seam, interval, how)).addColumns(reason);
    }

    /**
     * One row for each closed girth beside that of the body: {@code ease = garment - body}.
     *
     * <p>Columns: {@code level}, {@code measure}, and in mm, inches and cm each {@code garment}, {@code body}, {@code ease} (as drafted) and
     * {@code declared}.
     *
     * @param name the name of the table
     * @param girths the girths, for example {@link ClosedGirth#of}
     * @param steps the steps of the printed texts
     * @return the table
     */
    public static Table closedGirths(String name, List<ClosedGirth> girths, Steps steps) {
        StringColumn level = StringColumn.create("level");
        StringColumn measure = StringColumn.create("measure");
        LengthColumns garment = LengthColumns.named("garment", steps);
        LengthColumns body = LengthColumns.named("body", steps);
        LengthColumns ease = LengthColumns.named("ease", steps);
        LengthColumns declared = LengthColumns.named("declared", steps);
        for (ClosedGirth girth : girths) {
            level.append(girth.level());
            measure.append(girth.measure().label());
            garment.append(girth.garment());
            body.append(girth.body());
            ease.append(girth.ease());
            declared.append(girth.declared());
        }
        Table table = Table.create(name, level, measure);
        List.of(garment, body, ease, declared).forEach(lengths -> lengths.addTo(table));
        return table;
    }
}
