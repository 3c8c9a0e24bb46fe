package org.draftingmaths.tables;

import org.draftingmaths.unit.Length;
import org.draftingmaths.unit.Steps;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;

/** A length in three columns: true in mm, printed in inches and in cm, each rounded once from the true length. */
record LengthColumns(DoubleColumn mm, StringColumn inches, StringColumn cm, Steps steps) {

    /** Columns headed by their units alone, where a table has one length. */
    static LengthColumns plain(Steps steps) {
        return headed("", steps);
    }

    static LengthColumns named(String name, Steps steps) {
        return headed(name + " ", steps);
    }

    private static LengthColumns headed(String before, Steps steps) {
        return new LengthColumns(
                DoubleColumn.create(before + "mm"),
                StringColumn.create(before + "inches"),
                StringColumn.create(before + "cm"),
                steps);
    }

    void append(double length) {
        append(Length.mm(length));
    }

    void append(Length length) {
        mm.append(length.mm());
        inches.append(steps.inches(length));
        cm.append(steps.cm(length));
    }

    Table addTo(Table table) {
        return table.addColumns(mm, inches, cm);
    }
}
