package trimwright.wing;

/** Either the flow that satisfies the wing's equations or the reason why none was found. */
public sealed interface WingAnswer permits WingSolved, WingNotSolved {}
