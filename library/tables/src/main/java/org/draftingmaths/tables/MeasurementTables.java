package org.draftingmaths.tables;

import java.util.List;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.unit.Steps;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;

/** Sets of measurements as Tablesaw tables. */
public final class MeasurementTables {

    private MeasurementTables() {}

    /**
     * One row for each measure of each set, in their order.
     *
     * <p>Columns: {@code size} (name of the set), {@code measure}, {@code mm} (the true length), {@code inches} and
     * {@code cm} (texts, each rounded once from the true length), {@code provenance}.
     *
     * @param name the name of the table
     * @param sets the sets
     * @param steps the steps of the printed texts
     * @return the table; measures that a set lacks have no row
     */
    public static Table of(String name, List<Measurements> sets, Steps steps) {
        StringColumn size = StringColumn.create("size");
        StringColumn measure = StringColumn.create("measure");
        LengthColumns length = LengthColumns.plain(steps);
        StringColumn provenance = StringColumn.create("provenance");
        for (Measurements set : sets) {
            set.entries().forEach((what, entry) -> {
                size.append(set.name());
                measure.append(what.label());
                length.append(entry.length());
                provenance.append(entry.provenance().text());
            });
        }
        return length.addTo(Table.create(name, size, measure)).addColumns(provenance);
    }
}
