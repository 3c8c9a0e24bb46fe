package org.draftingmaths;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The arrows between rooms: a room uses what stands to its left and nothing else. */
class RoomsTest {

    /** All rooms in which measuring and drafting is done, block left out. */
    private static final List<String> MOVES =
            List.of("unit", "curve", "ledger", "measure", "piece", "seam", "dart", "fullness", "contour", "finish");

    private static final String BASE = "org.draftingmaths.";

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.draftingmaths");

    static Stream<Arguments> rooms() {
        return Stream.of(
                Arguments.of("unit", List.of()),
                Arguments.of("curve", List.of()),
                Arguments.of("ledger", List.of("unit", "curve")),
                Arguments.of("measure", List.of("unit", "curve", "ledger")),
                Arguments.of("piece", List.of("unit", "curve", "ledger")),
                Arguments.of("seam", List.of("unit", "curve", "ledger", "measure", "piece")),
                Arguments.of("dart", List.of("unit", "curve", "ledger", "measure", "piece", "seam")),
                Arguments.of("fullness", List.of("unit", "curve", "ledger", "measure", "piece", "seam", "dart")),
                Arguments.of("contour", List.of("unit", "curve", "ledger", "measure", "piece", "seam", "dart")),
                Arguments.of("finish", List.of("unit", "curve", "ledger", "measure", "piece", "seam", "dart")),
                Arguments.of("block", MOVES),
                Arguments.of("check", MOVES),
                Arguments.of(
                        "suppose",
                        Stream.concat(MOVES.stream(), Stream.of("check")).toList()));
    }

    @ParameterizedTest
    @MethodSource("rooms")
    void usesOnlyWhatStandsToItsLeft(String room, List<String> left) {
        String[] allowed = Stream.of(
                        Stream.of(room).map(RoomsTest::tree),
                        left.stream().map(RoomsTest::tree),
                        Stream.of(
                                "java..",
                                "org.apache.commons.geometry..",
                                "org.apache.commons.numbers..",
                                "org.ejml.."))
                .flatMap(each -> each)
                .toArray(String[]::new);
        classes()
                .that()
                .resideInAPackage(tree(room))
                .should()
                .onlyDependOnClassesThat(resideInAPackage("")
                        .or(com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage(allowed)))
                .allowEmptyShould(true)
                .check(CLASSES);
    }

    @Test
    void everyPackageIsARoom() {
        Set<String> known = rooms().map(room -> (String) room.get()[0]).collect(Collectors.toCollection(TreeSet::new));
        Set<String> found = CLASSES.that(resideOutsideOfPackage("java..")).stream()
                .map(each -> each.getPackageName())
                .map(name -> name.substring(BASE.length()))
                .collect(Collectors.toCollection(TreeSet::new));
        Assertions.assertThat(known).containsAll(found);
        Assertions.assertThat(found).contains("unit", "curve", "ledger", "piece", "seam", "dart", "check");
    }

    private static String tree(String room) {
        return BASE + room + "..";
    }
}
