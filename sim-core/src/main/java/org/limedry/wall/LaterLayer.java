package org.limedry.wall;

import java.time.Instant;

/**
 * A layer laid on the inner face in the course of a run, without lime: it neither sets nor carbonates.
 *
 * @param layer the layer as laid
 * @param laid when
 */
public record LaterLayer(LayerPlan layer, Instant laid) {}
