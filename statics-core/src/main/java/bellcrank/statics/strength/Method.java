package bellcrank.statics.strength;

/** How forces are held against strengths; one is chosen for a device, and they are never mixed. */
public enum Method {
  /**
   * Allowable stress: the stated loads as they are, the strength divided by a safety factor that
   * covers loads and strength together.
   */
  ALLOWABLE("allowable stress: stated loads against strength over a safety factor"),
  /**
   * Design resistance: the strength divided by a partial factor of the resistance; the loads are to
   * carry their own load factors, as factors of the case.
   */
  RESISTANCE("design resistance: loads with the factors of their case against strength over γ_M");

  private final String words;

  Method(String words) {
    this.words = words;
  }

  /**
   * The method in words.
   *
   * @return a phrase
   */
  public String words() {
    return words;
  }
}
