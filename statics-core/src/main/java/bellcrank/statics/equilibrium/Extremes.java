package bellcrank.statics.equilibrium;

/**
 * The ends of the range of a force inside a bar.
 *
 * @param least where it is least, signs regarded
 * @param greatest where it is greatest
 */
public record Extremes(Peak least, Peak greatest) {

  /**
   * The one that is larger in size.
   *
   * @return with its sign; the one that comes first if both are equal in size
   */
  public Peak largest() {
    double difference = Math.abs(greatest.value()) - Math.abs(least.value());
    return difference > 0 || (difference == 0 && greatest.at() <= least.at()) ? greatest : least;
  }
}
