package trimwright.platform;

/** Either a steady state in balance or the reason why none was found. */
public sealed interface Equilibrium permits Balanced, NoBalance {}
