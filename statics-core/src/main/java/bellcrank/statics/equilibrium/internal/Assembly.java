package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.Joint;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Weight;
import bellcrank.statics.geometry.Point;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

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
  private final String[] frameOfBody;
  private final Map<String, Integer> pinBodies = new HashMap<>();
  private final ForceLaw[] laws;
  private final int[] firstLawOfConnection;
  private final LoadLaw[] loads;
  private final int columns;
  private final int soughtColumn;
  private final int actionCount;
  private final boolean lossy;
  private final int[] columnOfAction;
  private final int[] bodyOfAction;
  private final boolean[] coupleColumn;

  private Assembly(Device device) {
    this.device = device;
    scale = Scale.of(device);
    members = device.members().size();
    List<String> frames = bodies();
    List<ForceLaw> list = new ArrayList<>(device.connections().size() + 4);
    LawBuilder builder = new LawBuilder(device, scale, this::bodyOrPin);
    firstLawOfConnection = new int[device.connections().size() + 1];
    boolean losses = false;
    for (int i = 0; i < device.connections().size(); i++) {
      Connection connection = device.connections().get(i);
      firstLawOfConnection[i] = list.size();
      Integer pinBody = pinBodies.isEmpty() ? null : pinBodies.get(connection.name());
      builder.connection(connection, pinBody == null ? -1 : pinBody, list::add);
      losses |=
          connection instanceof Reeving reeving
              && reeving.hauling() != Reeving.Hauling.IDEAL
              && reeving.efficiency() < 1;
    }
    firstLawOfConnection[device.connections().size()] = list.size();
    lossy = losses;
    int connectionLaws = list.size();
    for (Load load : device.loads()) {
      if (load instanceof Sought sought) {
        list.add(builder.sought(sought));
      }
    }
    laws = list.toArray(ForceLaw[]::new);
    frameOfBody = frames.toArray(String[]::new);
    int column = 0;
    int action = 0;
    int sought = -1;
    for (int i = 0; i < laws.length; i++) {
      if (i == connectionLaws) {
        sought = column;
      }
      laws[i].firstColumn = column;
      laws[i].firstAction = action;
      column += laws[i].columns();
      action += laws[i].actions();
    }
    columns = column;
    soughtColumn = sought < 0 ? column : sought;
    actionCount = action;
    columnOfAction = new int[action];
    bodyOfAction = new int[action];
    coupleColumn = new boolean[columns];
    for (ForceLaw law : laws) {
      int own = law.actions();
      for (int k = 0; k < own; k++) {
        columnOfAction[law.firstAction + k] = law.firstColumn + law.columnOf(k);
        bodyOfAction[law.firstAction + k] = law.bodyOf(k);
      }
      int ownColumns = law.columns();
      for (int k = 0; k < ownColumns; k++) {
        coupleColumn[law.firstColumn + k] = law.isCouple(k);
      }
    }
    loads = new LoadBuilder(device, scale, this::bodyOrPin).laws();
  }

  /**
   * The assembly of a device.
   *
   * @param device the device
   * @return its bodies, unknowns and equations
   */
  public static Assembly of(Device device) {
    return new Assembly(device);
  }

  private List<String> bodies() {
    List<String> frames = new ArrayList<>(members + device.joints().size());
    for (Member member : device.members()) {
      frames.add(member.name());
    }
    for (Joint joint : device.joints()) {
      frames.add(joint.name());
    }
    for (Connection connection : device.connections()) {
      if (connection instanceof Pin pin && isJoint(pin)) {
        pinBodies.put(pin.name(), frames.size());
        // the pin goes where the first of its bodies takes it, and stays if one is the ground
        frames.add(pin.bodies().contains(Ground.NAME) ? Ground.NAME : pin.bodies().get(0));
      }
    }
    return frames;
  }

  private boolean isJoint(Pin pin) {
    if (pin.bodies().size() > 2) {
      return true;
    }
    if (device.body(pin.name()).isPresent()) {
      return false; // loads of that name act on the body
    }
    for (Load load : device.loads()) {
      String body =
          load instanceof Force force
              ? force.body()
              : load instanceof Weight weight
                  ? weight.body()
                  : load instanceof Sought sought ? sought.body() : "";
      if (body.equals(pin.name())) {
        return true;
      }
    }
    return false;
  }

  int bodyOrPin(String name) {
    int body = device.bodyIndex(name);
    if (body >= 0 || pinBodies.isEmpty()) {
      return body;
    }
    Integer pin = pinBodies.get(name);
    return pin == null ? -1 : pin;
  }

  /** Fresh placements, as drawn. */
  public Placements placements() {
    return new Placements(bodyCount(), scale.middleX(), scale.middleY(), scale.size());
  }

  /** Moves placements to a pose. */
  public void place(Placements placements, Pose pose) {
    placements.take(pose, frameOfBody);
  }

  /** Fresh actions. */
  public Actions actions() {
    Actions actions = new Actions(actionCount, lossy);
    System.arraycopy(columnOfAction, 0, actions.column, 0, actionCount);
    System.arraycopy(bodyOfAction, 0, actions.body, 0, actionCount);
    return actions;
  }

  /** Evaluates all laws at the placements. */
  public void evaluate(Placements at, Actions out) {
    for (ForceLaw law : laws) {
      law.evaluate(at, out);
    }
  }

  /** Collects the given loads of a case about the moment centres that are set in {@code out}. */
  public void load(Placements at, LoadCase loadCase, Wrenches out) {
    out.clear();
    for (LoadLaw law : loads) {
      law.add(at, loadCase.factor(law.owner), out);
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
    return frameOfBody.length;
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
    return coupleColumn[column];
  }

  /** The laws of a connection. */
  List<ForceLaw> lawsOf(int connection) {
    return java.util.Arrays.asList(laws)
        .subList(firstLawOfConnection[connection], firstLawOfConnection[connection + 1]);
  }

  /** First unknown of a connection. */
  public int firstColumn(int connection) {
    int law = firstLawOfConnection[connection];
    return law < laws.length ? laws[law].firstColumn : columns;
  }

  /** Number of unknowns of a connection. */
  public int columnCount(int connection) {
    int next = firstLawOfConnection[connection + 1];
    return (next < laws.length ? laws[next].firstColumn : columns) - firstColumn(connection);
  }

  /** First unknown of a sought effort; −1 if there is none of that name. */
  public int soughtColumn(String name) {
    for (ForceLaw law : laws) {
      if (law instanceof SoughtLaw && law.owner.equals(name)) {
        return law.firstColumn;
      }
    }
    return -1;
  }

  /** Tension of a rope's last straight part for one unit of its last unknown; 1 for other kinds. */
  public double lastMultiple(int connection) {
    return laws[firstLawOfConnection[connection]] instanceof RopeLaw rope ? rope.lastMultiple() : 1;
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
    if (body < members + device.joints().size()) {
      return device.joints().get(body - members).name();
    }
    for (Map.Entry<String, Integer> pin : pinBodies.entrySet()) {
      if (pin.getValue() == body) {
        return pin.getKey();
      }
    }
    throw new IllegalStateException("no body " + body);
  }

  /** Body index of a pin that is a joint; −1 if it is not one. */
  public int pinBody(String pin) {
    return pinBodies.getOrDefault(pin, -1);
  }

  /** World abscissa of a scaled one. */
  public Point world(double qx, double qy) {
    return Point.of(scale.middleX() + scale.size() * qx, scale.middleY() + scale.size() * qy);
  }

  /** Device size in m. */
  public double size() {
    return scale.size();
  }
}
