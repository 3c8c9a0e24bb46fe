package org.draftingmaths.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.measure.ProportionRules;
import org.draftingmaths.measure.Wearer;
import org.draftingmaths.unit.Length;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;
import tech.tablesaw.api.Table;

class MeasurementTablesTest {

    @Test
    void of_hasARowForEachMeasureOfEachSet() {
        Measurements first = Measurements.of("38", Wearer.ADULT)
                .with(Measure.BUST, Length.mm(880))
                .filledBy(List.of(ProportionRules.BACK_WIDTH_FROM_BUST));
        Measurements second = Measurements.of("12", Wearer.ADULT).with(Measure.BUST, Length.inches(34));

        Table table = MeasurementTables.of("two figures", List.of(first, second), Steps.DEFAULT);

        assertThat(table.name()).isEqualTo("two figures");
        assertThat(table.columnNames()).containsExactly("size", "measure", "mm", "inches", "cm", "provenance");
        assertThat(table.stringColumn("size").asList()).containsExactly("38", "38", "12");
        assertThat(table.stringColumn("measure").asList()).containsExactly("bust", "back width", "bust");
        assertThat(table.doubleColumn("mm").asList()).containsExactly(880.0, 344.0, 863.6);
        assertThat(table.stringColumn("inches").asList()).containsExactly("34 5/8 in", "13 1/2 in", "34 in");
        assertThat(table.stringColumn("cm").asList()).containsExactly("88.0 cm", "34.4 cm", "86.4 cm");
        assertThat(table.stringColumn("provenance").asList())
                .containsExactly("measured", "proportioned (back width from bust)", "measured");
    }

    @Test
    void of_nothing_isAnEmptyTable() {
        assertThat(MeasurementTables.of("none", List.of(), Steps.DEFAULT).rowCount())
                .isZero();
    }
}
