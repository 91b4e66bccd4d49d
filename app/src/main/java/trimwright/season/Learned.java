package trimwright.season;

import java.util.List;
import trimwright.learned.LearnedTargets;

/**
 * Targets as they were learnt of one boat with one wing and one foil set.
 *
 * @param boat name
 * @param wing id
 * @param foils id
 * @param crewMass that the model's targets were computed with (kg)
 * @param boatHash of the boat file whose model they correct
 * @param sessions that were looked at, those without steady foiling among them
 */
public record Learned(
        String boat,
        String wing,
        String foils,
        double crewMass,
        String boatHash,
        List<Used> sessions,
        LearnedTargets targets) {
    /**
     * A session that was looked at.
     *
     * @param id of the session
     * @param boats in its logs that were taken
     * @param seconds of steady foiling (s)
     */
    public record Used(String id, List<String> boats, double seconds) {
        public Used {
            boats = List.copyOf(boats);
        }
    }

    public Learned {
        sessions = List.copyOf(sessions);
    }
}
