package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Strut;
import bellcrank.statics.geometry.Point;
import java.util.List;

/**
 * A device turned into bodies, unknowns and equations, without numbers of a pose. Bodies are the
 * members (three equations), the joints and those pins that are joints of their own (two equations
 * each). The unknowns are the force components of the connections, then the sought efforts. Fixed
 * after construction; numbers live in {@link Actions}, {@link Wrenches} and {@link Equations}.
 */
public final class Assembly {

  private final Device device;
  private final Scale scale;
  private final int members;
  private final int bodies;
  private final PinBodies pins;
  private final ForceLaw[] laws;

  /** Empty if every connection has one law. */
  private final int[] firstLawOfConnection;

  private final LoadLaw[] loads;
  private final int columns;
  private final int soughtLaw;
  private final int soughtColumn;
  private final boolean lossy;
  private final int[] columnOfAction;
  private final int[] bodyOfAction;

  private Assembly(Device device, boolean dryPins) {
    this.device = device;
    scale = Scale.of(device);
    members = device.members().size();
    List<Connection> connections = device.connections();
    pins = new PinBodies(device);
    // loads first: they tell which pins are bodies of their own
    int sought = 0;
    for (Load load : device.loads()) {
      if (load instanceof Sought effort) {
        pins.underLoad(effort.body());
        sought++;
      }
    }
    LoadBuilder given = new LoadBuilder(device, scale, pins, device.loads().size() - sought);
    for (Load load : device.loads()) {
      given.addLoad(load);
    }
    LawBuilder builder = new LawBuilder(device, scale, pins, connections.size() + sought, dryPins);
    boolean losses = false;
    firstLawOfConnection = new int[pins.count() == 0 ? 0 : connections.size() + 1];
    for (int i = 0; i < connections.size(); i++) {
      Connection connection = connections.get(i);
      if (firstLawOfConnection.length > 0) {
        firstLawOfConnection[i] = builder.count();
      }
      builder.addConnection(connection);
      if (connection instanceof Strut strut && strut.mass() > 0) {
        given.addStrut(strut);
      }
      losses |= connection instanceof Reeving reeving && isLossy(reeving);
    }
    if (firstLawOfConnection.length > 0) {
      firstLawOfConnection[connections.size()] = builder.count();
    }
    lossy = losses;
    soughtLaw = builder.count();
    soughtColumn = builder.columns();
    for (Load load : device.loads()) {
      if (load instanceof Sought effort) {
        builder.addSought(effort);
      }
    }
    laws = builder.laws();
    loads = given.laws();
    bodies = members + device.joints().size() + pins.count();
    columns = builder.columns();
    columnOfAction = new int[builder.actions()];
    bodyOfAction = new int[builder.actions()];
    for (ForceLaw law : laws) {
      law.wire(columnOfAction, bodyOfAction);
    }
  }

  /**
   * The assembly of a device.
   *
   * @param device the device
   * @return its bodies, unknowns and equations
   */
  public static Assembly of(Device device) {
    return new Assembly(device, false);
  }

  /**
   * The assembly of a device in which friction couples of pins are unknowns too. They restrain
   * forces only, no motion, so this one serves for forces.
   *
   * @param device the device
   * @return its bodies, unknowns and equations
   */
  public static Assembly withDryPins(Device device) {
    return new Assembly(device, true);
  }

  private static boolean isLossy(Reeving reeving) {
    return reeving.hauling() != Reeving.Hauling.IDEAL && reeving.efficiency() < 1;
  }

  /** Fresh placements, as drawn. */
  public Placements placements() {
    return new Placements(this);
  }

  /** Moves placements to a pose. */
  public void place(Placements placements, Pose pose) {
    placements.take(pose);
  }

  /** Fresh actions. */
  public Actions actions() {
    return new Actions(columnOfAction, bodyOfAction, lossy);
  }

  /** Writes all actions at the placements. */
  public void evaluate(Placements at, Actions out) {
    for (ForceLaw law : laws) {
      law.evaluate(at, out);
    }
  }

  /** Writes by how much each connection is from fitting, by unknowns. */
  void gaps(Placements at, double[] gaps) {
    for (ForceLaw law : laws) {
      law.gaps(at, gaps);
    }
  }

  /** Collects the given loads of a case. */
  public void load(Placements at, LoadCase loadCase, Wrenches out) {
    out.clear();
    boolean alike = loadCase.factors().isEmpty();
    for (LoadLaw law : loads) {
      law.add(at, alike ? loadCase.dynamic() : loadCase.factor(law.owner), out);
    }
  }

  /** The device. */
  public Device device() {
    return device;
  }

  Scale scale() {
    return scale;
  }

  /** Number of bodies but the ground. */
  public int bodyCount() {
    return bodies;
  }

  /** Number of members: they are the first bodies. */
  public int memberCount() {
    return members;
  }

  /** First equation of a body. */
  public int firstRow(int body) {
    return body <= members ? 3 * body : 3 * members + 2 * (body - members);
  }

  /** Number of equations. */
  public int rows() {
    return firstRow(bodyCount());
  }

  /** Number of unknowns. */
  public int columns() {
    return columns;
  }

  /** First unknown that is a sought effort; those before it are forces of connections. */
  public int firstSoughtColumn() {
    return soughtColumn;
  }

  /** Whether some connection carries forces that differ from the motion it forbids. */
  public boolean lossy() {
    return lossy;
  }

  /** Whether an unknown is a couple divided by the size rather than a force. */
  public boolean isCouple(int column) {
    for (ForceLaw law : laws) {
      if (column >= law.firstColumn && column < law.firstColumn + law.columns()) {
        return law.isCouple(column - law.firstColumn);
      }
    }
    return false;
  }

  /** The laws of a connection. */
  List<ForceLaw> lawsOf(int connection) {
    return java.util.Arrays.asList(laws).subList(firstLaw(connection), firstLaw(connection + 1));
  }

  private int firstLaw(int connection) {
    return firstLawOfConnection.length == 0 ? connection : firstLawOfConnection[connection];
  }

  /** First unknown of a connection. */
  public int firstColumn(int connection) {
    int law = firstLaw(connection);
    return law < laws.length ? laws[law].firstColumn : columns;
  }

  /** Number of unknowns of a connection. */
  public int columnCount(int connection) {
    int next = firstLaw(connection + 1);
    return (next < laws.length ? laws[next].firstColumn : columns) - firstColumn(connection);
  }

  /** First unknown of a sought effort; −1 if there is none of that name. */
  public int soughtColumn(String name) {
    for (int i = soughtLaw; i < laws.length; i++) {
      if (laws[i].owner.equals(name)) {
        return laws[i].firstColumn;
      }
    }
    return -1;
  }

  /** Tension of a rope's last straight part for one unit of its last unknown; 1 for other kinds. */
  public double lastMultiple(int connection) {
    return laws[firstLaw(connection)] instanceof RopeLaw rope ? rope.lastMultiple() : 1;
  }

  ForceLaw[] laws() {
    return laws;
  }

  LoadLaw[] loadLaws() {
    return loads;
  }

  /** Name of a body; a pin that is a joint has the pin's name. */
  public String bodyName(int body) {
    if (body < 0) {
      return Ground.NAME;
    }
    if (body < members) {
      return device.members().get(body).name();
    }
    int joint = body - members;
    return joint < device.joints().size() ? device.joints().get(joint).name() : pins.name(body);
  }

  /** Names of the bodies whose frames the bodies have: a pin moves with one of its bodies. */
  String[] frameNames() {
    String[] names = new String[bodies];
    for (int body = 0; body < bodies; body++) {
      boolean pin = body >= bodies - pins.count();
      names[body] = pin ? pins.frameName(body) : bodyName(body);
    }
    return names;
  }

  /** Body index of a pin that is a joint; −1 if it is not one. */
  public int pinBody(String pin) {
    return pins.of(pin);
  }

  /** Unknown of the friction couple on one body of a dry pin, by the place of the body in it. */
  public int coupleColumn(int connection, int body) {
    int law =
        firstLaw(connection) + (firstLaw(connection + 1) - firstLaw(connection) > 1 ? body : 0);
    return laws[law].firstColumn + laws[law].columns() - 1;
  }

  /** World place of scaled coordinates. */
  public Point world(double qx, double qy) {
    return Point.of(scale.middleX() + scale.size() * qx, scale.middleY() + scale.size() * qy);
  }

  /** Device size in m. */
  public double size() {
    return scale.size();
  }
}
