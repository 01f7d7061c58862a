package org.bearingline.routing.operation;

/** An operation inside an opening of the template. */
public sealed interface Hollow extends Routed
    permits Recess,
        ThroughOpening,
        Ledge,
        StoppedSlot,
        Mortise,
        HingeLeaf,
        InlayPocket,
        InlayPlug {}
