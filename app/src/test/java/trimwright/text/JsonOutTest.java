package trimwright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.junit.jupiter.api.Test;

class JsonOutTest {
    private record Point(double boatSpeedKn, double latitudeDeg, double[] camberDeg, List<Double> shareRatio) {}

    @Test
    void decimalsFollowTheUnitInTheKeyHoweverTheNumberArrives() {
        ObjectNode document = JsonOut.document("try/1");
        document.put("heel_deg", -0.00001);
        document.put("count", 3);
        document.set("point", JsonOut.mapper().valueToTree(new Point(1.23456, 2, new double[] {1e-9}, List.of(0.5))));
        document.putPOJO("raw", new Point(12345678.9, -1.5, new double[] {Double.NaN}, List.of(1e7)));
        assertEquals(
                "{'schema':'try/1','heel_deg':0.000,'count':3,"
                        + "'point':{'boat_speed_kn':1.235,'latitude_deg':2.0000000,'camber_deg':[0.000],'share_ratio':[0.500000]},"
                        + "'raw':{'boat_speed_kn':12345678.900,'latitude_deg':-1.5000000,'camber_deg':[null],'share_ratio':[10000000.000000]}}",
                JsonOut.text(document).replaceAll("\\s", "").replace('"', '\''));
    }

    @Test
    void aModelDocumentNamesProgramAndBoatFile() {
        ObjectNode document = JsonOut.document("try/1", "abc");
        assertEquals("abc", document.at("/model/boat_hash").asText());
        assertEquals(Version.get(), document.at("/model/version").asText());
    }
}
