/**
 * Pattern routing, one file a word. With ⊕ dilation, ⊖ erosion and D(ρ) the disc of radius ρ, each
 * class opens with its set formula: P is the part, T the template, R the follower's radius, r the
 * cutter's, A what remains of the work. Millimetres and degrees; wood on the left of every path.
 * Read {@link org.bearingline.routing.Template} and {@link org.bearingline.routing.Reach} first.
 */
package org.bearingline.routing;
