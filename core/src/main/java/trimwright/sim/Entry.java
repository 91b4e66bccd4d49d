package trimwright.sim;

import trimwright.crew.Habits;
import trimwright.crew.Temper;

/**
 * One boat of the day.
 *
 * @param name as in the files
 * @param habits how her crew sails otherwise than it should
 * @param temper what else makes her race her own
 * @param faults of her instruments
 * @param perturbation how she differs from the boat file
 */
public record Entry(String name, Habits habits, Temper temper, SensorFaults faults, Perturbation perturbation) {}
