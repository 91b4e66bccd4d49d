package trimwright.keyfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class KeyFileTest {
    private static final KeyTable TABLE = new KeyTable(
            "try/1",
            List.of(
                    Key.number("speed_kn", 0, 10, "a speed").orAbsent(),
                    Key.text("mark[].name", "a name"),
                    Key.number("mark[].place.x_m", -1, 1, "a place")));

    @Test
    void rowsOfTablesKeepTheirOwnValues() {
        KeyFile file =
                read("schema='try/1'\n[[mark]]\nname='a'\nplace.x_m=0.5\n[[mark]]\nname='b'\n[mark.place]\nx_m=1\n");
        assertEquals(List.of(), file.faults());
        List<Values> marks = file.values().list("mark");
        assertEquals("a", marks.get(0).getText("name"));
        assertEquals(1.0, marks.get(1).number("place.x_m"));
        assertEquals(Double.NaN, file.values().number("speed_kn"));
    }

    @Test
    void oneTableForManyAndManyForOneAreToldHowToBeWritten() {
        KeyFile file = read("schema='try/1'\n[mark]\nname='a'\n");
        assertEquals(
                "mark: one table or value; expected an array of tables, [[mark]] in double brackets, each with name, place",
                file.faults().get(0).key() + ": " + file.faults().get(0).message());
        file = read("schema='try/1'\n[[mark]]\nname='a'\n[[mark.place]]\nx_m=1\n");
        assertEquals(
                "mark[0].place: an array; expected one table, [mark.place] in single brackets, with x_m",
                file.faults().get(0).key() + ": " + file.faults().get(0).message());
    }

    @Test
    void faultsOfARowSayWhichRow() {
        KeyFile file = read("schema='try/1'\nspeed_kn='x'\n[[mark]]\nname=''\n[[mark]]\nname='b'\nplace.x_m=3\n");
        assertEquals(
                List.of(
                        "2: speed_kn: \"x\"; expected a number, 0 to 10 kn",
                        "3: mark[0].place: missing; expected a table with x_m",
                        "4: mark[0].name: \"\"; expected text in quotes",
                        "7: mark[1].place.x_m: 3 m; expected -1 to 1 m"),
                file.faults().stream()
                        .map(fault -> fault.text("f").substring(2))
                        .toList());
    }

    @Test
    void anArrayWhereATableBelongsIsUnknown() {
        KeyFile file = read("schema='try/1'\nmark=[1]\nspeed_kn=[]\n");
        assertEquals(
                List.of("mark[0]", "speed_kn"),
                file.faults().stream().map(Fault::key).toList());
    }

    @Test
    void askingForAKeyThatIsNotInTheTableIsOurFault() {
        Values values = read("schema='try/1'").values();
        assertThrows(IllegalArgumentException.class, () -> values.number("speed_ms"));
    }

    @Test
    void theNearestNameIsOfferedOnlyWhenNear() {
        assertEquals("speed_kn", NearName.find("speed_kmh", List.of("speed_kn", "mark")));
        assertEquals("mark", NearName.find("makr", List.of("speed_kn", "mark")));
        assertEquals(null, NearName.find("colour", List.of("speed_kn", "mark")));
    }

    private static KeyFile read(String toml) {
        return KeyFile.read(toml, TABLE, name -> null);
    }
}
