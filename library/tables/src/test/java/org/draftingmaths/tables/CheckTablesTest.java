package org.draftingmaths.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import org.draftingmaths.check.ClosedGirth;
import org.draftingmaths.check.Weights;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.seam.Walk;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;
import tech.tablesaw.api.Table;

/** Figures are those of the drawing: a skirt's panel of 300 by 500 mm with a dart of 30 mm, on one of 295 by 500 mm. */
class CheckTablesTest {

    private static Draft skirt() {
        Piece front = Drawing.of("front")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(300, 0)
                .edge("side", Role.SEAM)
                .line(300, 500)
                .edge("waist", Role.SEAM)
                .line(180, 500)
                .dart("dart", 165, 380, 150, 500, 0, Leg.AFTER)
                .line(0, 500)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .level("hip", 0, 300, 400, 300)
                .level("low waist", 0, 440, 400, 440)
                .notch("side", 200)
                .piece();
        Piece back = Drawing.of("back")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(265, 0)
                .edge("side", Role.SEAM)
                .line(265, 503)
                .edge("waist", Role.SEAM)
                .line(0, 503)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .notch("side", 200)
                .piece();
        return new Draft(
                "skirt",
                List.of(front, back),
                List.of(
                        Seam.flat("side", Seam.Mate.of("front", "side"), Seam.Mate.of("back", "side")),
                        new Seam(
                                "waist",
                                Seam.Mate.of("front", "waist"),
                                Seam.Mate.of("back", "waist"),
                                List.of(new Seam.Held(1, 5, Seam.How.EASE, "over the hip")))));
    }

    @Test
    void walksByNotchInterval() {
        Table table = CheckTables.walks("walks", Walk.all(skirt()), Steps.DEFAULT);
        assertThat(table.name()).isEqualTo("walks");
        assertThat(table.stringColumn("seam").asList()).containsExactly("side", "side", "waist");
        assertThat(table.intColumn("interval").asList()).containsExactly(1, 2, 1);
        assertThat(table.doubleColumn("first mm").asDoubleArray())
                .containsExactly(new double[] {200, 300, 270}, within(1e-9));
        assertThat(table.doubleColumn("ease mm").asDoubleArray()).containsExactly(0, 0, 5);
        assertThat(table.doubleColumn("second mm").asDoubleArray())
                .containsExactly(new double[] {200, 303, 265}, within(1e-9));
        assertThat(table.doubleColumn("difference mm").asDoubleArray())
                .containsExactly(new double[] {0, -3, 0}, within(1e-9));
        assertThat(table.stringColumn("second inches").asList()).containsExactly("7 7/8 in", "11 7/8 in", "10 3/8 in");
        assertThat(table.stringColumn("second cm").asList()).containsExactly("20.0 cm", "30.3 cm", "26.5 cm");
    }

    /** The dart takes 30 mm at the waist and half of it half way to its point. */
    @Test
    void girthsAreClosed() {
        Table table = CheckTables.girths("girths", skirt(), Steps.DEFAULT);
        assertThat(table.stringColumn("piece").asList()).containsExactly("front", "front");
        assertThat(table.stringColumn("level").asList()).containsExactly("hip", "low waist");
        assertThat(table.doubleColumn("closed mm").asDoubleArray())
                .containsExactly(new double[] {300, 285}, within(1e-9));
        assertThat(table.stringColumn("closed cm").asList()).containsExactly("30.0 cm", "28.5 cm");
    }

    /** 960 mm round a body of 900 are 60 of ease, 10 more than declared. */
    @Test
    void girthsStandBesideTheBody() {
        Table table = CheckTables.closedGirths(
                "girths", List.of(new ClosedGirth("hip line", Measure.HIP, 960, 900, 50)), Steps.DEFAULT);
        assertThat(table.row(0).getString("level")).isEqualTo("hip line");
        assertThat(table.row(0).getString("measure")).isEqualTo("hip");
        assertThat(table.row(0).getDouble("ease mm")).isEqualTo(60);
        assertThat(table.row(0).getDouble("declared mm")).isEqualTo(50);
        assertThat(table.row(0).getString("garment cm")).isEqualTo("96.0 cm");
    }

    @Test
    void easesAreThoseDeclared() {
        Table table = CheckTables.eases("eases", skirt(), Steps.DEFAULT);
        assertThat(table.rowCount()).isEqualTo(1);
        assertThat(table.row(0).getString("seam")).isEqualTo("waist");
        assertThat(table.row(0).getString("how")).isEqualTo("ease");
        assertThat(table.row(0).getDouble("surplus mm")).isEqualTo(5);
        assertThat(table.row(0).getString("surplus inches")).isEqualTo("1/4 in");
        assertThat(table.row(0).getString("reason")).isEqualTo("over the hip");
    }

    @Test
    void findingsKeepTheirFigures() {
        Finding finding = new Finding(Finding.Kind.SEAM_LENGTHS_DIFFER, "seam 'side'", Quantity.LENGTH, 300, 303, 0.5);
        Locale locale = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            Table table = CheckTables.findings("found", List.of(finding), Weights.COMMON, Steps.DEFAULT);
            assertThat(table.row(0).getString("severity")).isEqualTo("slight");
            assertThat(table.row(0).getString("kind")).isEqualTo("the seam lengths do not match");
            assertThat(table.row(0).getString("quantity")).isEqualTo("length");
            assertThat(table.row(0).getDouble("measured")).isEqualTo(300);
            assertThat(table.row(0).getDouble("off by")).isEqualTo(-3);
            assertThat(table.row(0).getString("sentence")).isEqualTo(finding.sentence(Steps.DEFAULT));
            assertThat(CheckTables.findings("none", List.of(), Weights.COMMON, Steps.DEFAULT)
                            .rowCount())
                    .isZero();
        } finally {
            Locale.setDefault(locale);
        }
    }
}
