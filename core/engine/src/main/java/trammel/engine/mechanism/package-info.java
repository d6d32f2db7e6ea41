/**
 * Rigid axles guided by more than bars: rockers and arms as further bodies, sliding joints, ball
 * joints and bushes. Pivots and joints are exact, links and bushes elastic. Units: mm, N, rad; axes
 * after ISO 8855.
 */
package trammel.engine.mechanism;
