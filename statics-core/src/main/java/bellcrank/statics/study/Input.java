package bellcrank.statics.study;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.strength.Material;
import bellcrank.statics.units.Dimension;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.ToDoubleFunction;

/**
 * One number of a model that can be otherwise than stated: a coordinate, a load, a coefficient, a
 * width, a strength. Immutable; two inputs of the same text are equal.
 *
 * <p>All parts at a point go with it when it moves. Angles are in rad, counter-clockwise positive;
 * all else is in SI units as the device has it.
 */
public final class Input {

  private final InputNumber number;

  private Input(InputNumber number) {
    this.number = number;
  }

  /**
   * Reads the text form, such as {@code x of ram}, {@code distance of ram from hinge}, {@code turn
   * of [ram, grip] about hinge}, {@code size of hand}, {@code friction of heel}, {@code gravity} or
   * {@code factor of hand in storm}; {@code friction of [heel, toe]} is one number of several
   * parts, see {@link #together}. Names with commas, brackets or one of the words from, about, in,
   * at inside stand in double quotes.
   *
   * @param text the text
   * @return the input; whether a model has such a number shows when it is read
   * @throws ModelException if it is no such text
   */
  public static Input parse(String text) {
    return new Input(InputText.parse(text));
  }

  /**
   * The abscissa of a point.
   *
   * @param point name of the point
   * @return in m, positive to the right
   */
  public static Input x(String point) {
    return new Input(new PlaceNumbers.Coordinate(false, point));
  }

  /**
   * The ordinate of a point.
   *
   * @param point name of the point
   * @return in m, positive up
   */
  public static Input y(String point) {
    return new Input(new PlaceNumbers.Coordinate(true, point));
  }

  /**
   * The distance of a point from another, which stays where it is; the point moves along the line
   * through both.
   *
   * @param point name of the point that moves
   * @param from name of the point that stays
   * @return in m, above 0
   */
  public static Input distance(String point, String from) {
    return new Input(new PlaceNumbers.Distance(point, from));
  }

  /**
   * The turn of points about another from where they are stated, 0 as stated: a member that is set
   * at another angle.
   *
   * @param points names of the points that turn
   * @param about name of the point about which they turn
   * @return in rad, counter-clockwise positive
   */
  public static Input turn(List<String> points, String about) {
    return new Input(new PlaceNumbers.Turn(List.copyOf(points), about));
  }

  /**
   * The size of a force that keeps its direction.
   *
   * @param force name of a force other than zero
   * @return in N; a negative one acts against the stated direction
   */
  public static Input size(String force) {
    return new Input(new ForceNumbers.Size(force));
  }

  /**
   * The direction of a force, spread load or sought effort, of the push of a roller or contact, or
   * of what a slot or guide slides along. A force keeps its size.
   *
   * @param part name of the part
   * @return in rad from the right
   */
  public static Input direction(String part) {
    return new Input(new ForceNumbers.Way(part));
  }

  /**
   * The mass of a weight or strut.
   *
   * @param part name of the weight or of a strut that has a mass
   * @return in kg, 0 or more
   */
  public static Input mass(String part) {
    return new Input(PartKind.MASS_OF.of(part));
  }

  /**
   * The moment of a couple.
   *
   * @param couple name of the couple
   * @return in N·m
   */
  public static Input moment(String couple) {
    return new Input(PartKind.MOMENT_OF.of(couple));
  }

  /**
   * The intensity of a spread load where it starts.
   *
   * @param spread name of the spread load
   * @return in N/m
   */
  public static Input start(String spread) {
    return new Input(PartKind.START.of(spread));
  }

  /**
   * The intensity of a spread load where it ends.
   *
   * @param spread name of the spread load
   * @return in N/m
   */
  public static Input end(String spread) {
    return new Input(PartKind.END.of(spread));
  }

  /**
   * The stiffness of a spring.
   *
   * @param spring name of the spring
   * @return in N/m, above 0
   */
  public static Input stiffness(String spring) {
    return new Input(PartKind.STIFFNESS.of(spring));
  }

  /**
   * The free length of a spring.
   *
   * @param spring name of the spring
   * @return in m, 0 or more
   */
  public static Input freeLength(String spring) {
    return new Input(PartKind.FREE_LENGTH.of(spring));
  }

  /**
   * The stiffness of a torsion spring.
   *
   * @param spring name of the torsion spring
   * @return in N·m/rad, above 0
   */
  public static Input torsionStiffness(String spring) {
    return new Input(PartKind.TORSION_STIFFNESS.of(spring));
  }

  /**
   * By how much a torsion spring is turned as drawn.
   *
   * @param spring name of the torsion spring
   * @return in rad
   */
  public static Input turnedAngle(String spring) {
    return new Input(PartKind.TURNED.of(spring));
  }

  /**
   * The static coefficient of friction of a contact, base, pin, wrap or screw. A kinetic one that
   * is stated as the same goes with it.
   *
   * @param part name of the connection
   * @return 0 or more
   */
  public static Input friction(String part) {
    return new Input(PartKind.FRICTION.of(part));
  }

  /**
   * The kinetic coefficient of friction of a contact or base.
   *
   * @param part name of the connection
   * @return 0 to the static one
   */
  public static Input kineticFriction(String part) {
    return new Input(PartKind.KINETIC.of(part));
  }

  /**
   * The width of a contact base.
   *
   * @param base name of the base
   * @return in m, above 0
   */
  public static Input width(String base) {
    return new Input(PartKind.WIDTH.of(base));
  }

  /**
   * The radius of a pin, or of the post of a wrap.
   *
   * @param part name of the connection
   * @return in m
   */
  public static Input radius(String part) {
    return new Input(PartKind.RADIUS.of(part));
  }

  /**
   * The radius of the sheaves and drums of a reeving at a point.
   *
   * @param reeving name of the reeving
   * @param at name of the point
   * @return in m
   */
  public static Input radius(String reeving, String at) {
    return new Input(new ForceNumbers.Sheave(reeving, at));
  }

  /**
   * The mean radius of the thread of a screw.
   *
   * @param screw name of the screw
   * @return in m, above 0
   */
  public static Input meanRadius(String screw) {
    return new Input(PartKind.MEAN_RADIUS.of(screw));
  }

  /**
   * The lead of a screw.
   *
   * @param screw name of the screw
   * @return in m, above 0
   */
  public static Input lead(String screw) {
    return new Input(PartKind.LEAD.of(screw));
  }

  /**
   * The efficiency of each sheave of a reeving.
   *
   * @param reeving name of the reeving
   * @return above 0 and at most 1
   */
  public static Input efficiency(String reeving) {
    return new Input(PartKind.EFFICIENCY.of(reeving));
  }

  /**
   * How strong gravity is; it keeps its direction.
   *
   * @return in m/s²
   */
  public static Input gravity() {
    return new Input(new ForceNumbers.Gravity());
  }

  /**
   * The slope on which a device stands that is drawn as if the ground were level: gravity is turned
   * instead.
   *
   * @return in rad, positive where the ground rises to the right
   */
  public static Input slope() {
    return new Input(new ForceNumbers.Slope());
  }

  /**
   * The factor of a load in a case.
   *
   * @param load name of the load
   * @param loadCase name of the case
   * @return a plain number, 1 where the case states none
   */
  public static Input factor(String load, String loadCase) {
    return new Input(new ForceNumbers.Factor(load, loadCase));
  }

  /**
   * The dynamic factor of a case.
   *
   * @param loadCase name of the case
   * @return a plain number above 0
   */
  public static Input dynamicFactor(String loadCase) {
    return new Input(new ForceNumbers.Dynamic(loadCase));
  }

  /**
   * The presumptive bearing pressure of the ground under a base.
   *
   * @param base name of the base
   * @return in Pa, above 0
   */
  public static Input bearing(String base) {
    return new Input(PartKind.BEARING.of(base));
  }

  /**
   * The adhesion of the ground under a base.
   *
   * @param base name of the base
   * @return in Pa, 0 or more
   */
  public static Input adhesion(String base) {
    return new Input(PartKind.ADHESION.of(base));
  }

  /**
   * The working load limit of a rated part.
   *
   * @param rating name of the rating
   * @return in N, above 0
   */
  public static Input workingLoadLimit(String rating) {
    return new Input(PartKind.LIMIT.of(rating));
  }

  /**
   * A strength of what a part is made of.
   *
   * @param strength which one
   * @param part name of a member, strut or pin joint of the sizing
   * @return in Pa, above 0
   */
  public static Input strength(Material.Strength strength, String part) {
    return new Input(new MaterialNumber(Optional.of(strength), part));
  }

  /**
   * One number that several parts have, such as the friction of both feet on one ground or the mass
   * of casks that are alike: it is drawn, searched or put once for all of them. The model must
   * state it alike at each.
   *
   * @param inputs numbers of one kind, each of one part: {@code friction of heel} and {@code
   *     friction of toe}
   * @return the input, with a text such as {@code friction of [heel, toe]}
   * @throws ModelException if there is none, they are of different kinds, one is there twice, or
   *     one is of no part alone
   */
  public static Input together(List<Input> inputs) {
    if (inputs.isEmpty()) {
      throw new ModelException("together", "inputs", "none", "at least one");
    }
    if (inputs.size() == 1) {
      return inputs.get(0);
    }
    List<InputNumber> numbers = inputs.stream().map(Input::number).toList();
    String texts = String.join(", ", inputs.stream().map(Input::text).toList());
    InputNumber together = InputText.together(numbers).orElse(null);
    if (together == null) {
      throw new ModelException(
          "together",
          "inputs",
          texts,
          "numbers of one kind, each of another part, such as friction of heel and friction of toe");
    }
    return new Input(together);
  }

  /**
   * A number of one's own. What depends on it is found by differences, since nothing is known of
   * how it enters the model. Both functions are called by several threads at once where samples are
   * drawn so.
   *
   * @param name what it is called
   * @param dimension what kind of quantity it is
   * @param value reads it from a model, in SI units
   * @param put the model with another value; throws a {@link ModelException} for a value that
   *     cannot be
   * @return the input; equal only to one of the same functions
   */
  public static Input of(
      String name,
      Dimension dimension,
      ToDoubleFunction<Model> value,
      BiFunction<Model, Double, Model> put) {
    return new Input(new OwnNumber(name, dimension, value, put));
  }

  /**
   * The text form.
   *
   * @return what {@link #parse} reads again, unless the number is one's own
   */
  public String text() {
    return number.text();
  }

  /**
   * What kind of quantity it is.
   *
   * @return its dimension
   */
  public Dimension dimension() {
    return number.dimension();
  }

  /**
   * The number as a model states it.
   *
   * @param model the model
   * @return in SI units
   * @throws ModelException if the model has no such number
   */
  public double value(Model model) {
    return number instanceof OwnNumber own ? own.value(model) : number.read(new Draft(model));
  }

  /**
   * The model with another value of this number.
   *
   * @param model the model; stays as it is
   * @param value the value, in SI units
   * @return a changed copy
   * @throws ModelException if the model has no such number, or nothing can be built with this value
   */
  public Model put(Model model, double value) {
    return put(model, List.of(this), List.of(value));
  }

  /**
   * The model with other values of several numbers, put in the order of the list; the device is
   * built once. All of them are what they were put to then: a distance goes after the coordinates
   * of the point that it is told from.
   *
   * @param model the model; stays as it is
   * @param inputs the numbers
   * @param values their values in the same order, in SI units
   * @return a changed copy
   * @throws ModelException if the model has no such number, nothing can be built with these values,
   *     a value is not finite, a number changes one that was put before it, or the lists are not of
   *     the same length
   */
  public static Model put(Model model, List<Input> inputs, List<Double> values) {
    if (inputs.size() != values.size()) {
      throw new ModelException(
          "inputs", "values", values.size(), "as many as there are inputs, " + inputs.size());
    }
    return Putting.of(model, inputs, values).build();
  }

  InputNumber number() {
    return number;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Input input && number.equals(input.number);
  }

  @Override
  public int hashCode() {
    return number.hashCode();
  }

  @Override
  public String toString() {
    return text();
  }
}
