package trimwright.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.debrief.SessionCourse;
import trimwright.drills.DrillBoats;
import trimwright.learned.LearnedTargets;
import trimwright.learned.SteadyBlock;
import trimwright.response.SpeedResponse;
import trimwright.store.BoatInfo;
import trimwright.store.Library;
import trimwright.store.SessionInfo;
import trimwright.target.TargetBook;
import trimwright.text.NoAnswerException;
import trimwright.text.Progress;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** Learns from sessions of a library. */
public final class LearnRun {
    private LearnRun() {}

    /**
     * What those sessions teach.
     *
     * @param own names in the logs of the boats that teach; empty for all
     * @param book the model's targets of that boat and wing
     * @param progress told of each session
     * @throws UserInputException where a boat named is in none of the sessions
     * @throws NoAnswerException where the boat holds her targets in no wind, so that nothing reachable is known
     */
    public static Learned of(
            Library library,
            List<SessionInfo> sessions,
            BoatFile file,
            WingSpec wing,
            Set<String> own,
            TargetBook book,
            Progress progress) {
        Set<String> known = new TreeSet<>();
        sessions.forEach(session -> session.boats().forEach(boat -> known.add(boat.boat())));
        for (String name : own) {
            if (!known.contains(name)) {
                throw new UserInputException(Texts.of("learn.no_boat", name, String.join(", ", known)));
            }
        }
        SpeedResponse response = DrillBoats.response(file, wing, book);
        if (response == null) {
            throw new NoAnswerException(
                    Texts.of("learn.no_response", file.boat().title(), wing.id()));
        }
        SessionBlocks reader = new SessionBlocks(file.boat(), book, response);
        Predicate<String> wanted = name -> own.isEmpty() || own.contains(name);
        List<SteadyBlock> blocks = new ArrayList<>();
        List<Learned.Used> used = new ArrayList<>();
        for (SessionInfo session : sessions) {
            List<String> boats =
                    session.boats().stream().map(BoatInfo::boat).filter(wanted).toList();
            List<SteadyBlock> found = boats.isEmpty()
                    ? List.of()
                    : reader.of(used.size(), library.load(session), SessionCourse.find(library, session), wanted);
            blocks.addAll(found);
            double seconds = found.stream().mapToDouble(SteadyBlock::seconds).sum();
            used.add(new Learned.Used(session.id(), boats, seconds));
            progress.done(1);
        }
        return new Learned(
                file.boat().name(),
                wing.id(),
                file.boat().foils().id(),
                file.boat().crew().mass(),
                file.hash(),
                used,
                LearnedTargets.of(blocks));
    }
}
