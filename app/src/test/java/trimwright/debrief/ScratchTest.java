package trimwright.debrief;
import java.nio.file.*; import org.junit.jupiter.api.Test; import trimwright.fleet.*; import trimwright.prepare.*; import trimwright.raceday.ScenarioFile; import trimwright.sim.*; import trimwright.target.TargetBook; import trimwright.text.Progress;
class ScratchTest {
  @Test void look() throws Exception {
    Path folder = Path.of("/tmp/study");
    Files.createDirectories(folder);
    TargetBook book = new TargetBooks(new BookCache(folder.resolve("books"), note -> {})).of(TargetRequest.of(SimulatedDay.BOAT, SimulatedDay.wing()), Progress.NONE);
    for (String s : System.getProperty("seeds", "1").split(",")) {
      int min = Integer.getInteger("min", 25);
      Scenario sc = ScenarioFile.draw(Integer.parseInt(s));
      SimulatedDay day = SimulatedDay.of(sc, min, folder.resolve(s + "-" + min), book);
      DebriefReport report = day.debrief(null);
      long t = System.nanoTime();
      FleetFindings f = FleetFindings.of(report.boats().stream().map(BoatDebrief::wind).toList(), report.boats().stream().map(BoatDebrief::pieces).toList());
      System.out.printf("seed %s block %.0f in %.2f s%n", s, f.block(), (System.nanoTime() - t) / 1e9);
      for (Entry e : sc.entries()) System.out.printf("  %s %s%n", e.name(), e.habits());
      for (Difference d : f.differences()) if (d.isTold() || d.question() == Question.PROGRESS || d.question() == Question.TURN || Boolean.getBoolean("all")) System.out.printf("  %s %-9s %-9s %-11s %8.3f (%.3f to %.3f) p %.4f s %.0f blocks %.1f%n", d.isTold() ? "TOLD" : "    ", d.boat(), d.on(), d.question(), d.value() * k(d), d.low() * k(d), d.high() * k(d), d.chance(), d.evidence().seconds(), d.evidence().blocks());
    }
  }
  static double k(Difference d) { return switch (d.question()) { case PROGRESS -> 1.9438; case TURN, RIDE_HEIGHT, SHEET_LOAD -> 1; default -> 180 / Math.PI; }; }
}
