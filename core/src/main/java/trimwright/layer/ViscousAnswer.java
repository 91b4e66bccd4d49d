package trimwright.layer;

/** What a computation with boundary layers came to. */
public sealed interface ViscousAnswer permits ViscousPoint, NoAgreement {}
