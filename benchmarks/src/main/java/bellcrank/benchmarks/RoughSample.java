package bellcrank.benchmarks;

import bellcrank.statics.device.Device;

/** A device of rough contacts, with the load whose greatest multiple is sought. */
public enum RoughSample {
  /** One member on two contacts. */
  LADDER("picker") {
    @Override
    public Device device() {
      return RoughDevices.ladder();
    }
  },
  /** Five members on ten contacts. */
  CRATE_STACK("push") {
    @Override
    public Device device() {
      return RoughDevices.crateStack();
    }
  };

  private final String varied;

  RoughSample(String varied) {
    this.varied = varied;
  }

  /**
   * The device.
   *
   * @return a newly built one
   */
  public abstract Device device();

  /**
   * The load that is multiplied until the device gives way.
   *
   * @return its name
   */
  public String varied() {
    return varied;
  }
}
