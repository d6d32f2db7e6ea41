package trammel.engine.uncertainty;

/**
 * How much one figure has to do with a check's uncertainty.
 *
 * @param figure the figure
 * @param share its share of the sum of the squared changes that each figure alone makes, 0 to 1
 */
public record FigureShare(Figure figure, double share) {}
