package bellcrank.statics.strength;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.BarForces;
import bellcrank.statics.equilibrium.InsideForce;
import bellcrank.statics.equilibrium.Reaction;
import bellcrank.statics.equilibrium.internal.StateReader;
import bellcrank.statics.geometry.Frame;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the parts carry in one state, in the order of the {@link Needs}. States of one device in one
 * pose can be mixed, since forces follow the loads linearly.
 */
final class CarriedForces {

  private final List<BarLine> bars = new ArrayList<>();
  private final List<Optional<String>> barsOpen = new ArrayList<>();
  private final List<Frame> frames = new ArrayList<>();
  private final List<Optional<String>> forcesOpen = new ArrayList<>();
  private final List<Optional<String>> tensionsOpen = new ArrayList<>();
  private final double[] x;
  private final double[] y;
  private final double[] couples;
  private final double[] tensions;
  private final double[] endTensions;
  private final double[] lengths;

  private CarriedForces(Needs needs) {
    x = new double[needs.forces().size()];
    y = new double[x.length];
    couples = new double[x.length];
    tensions = new double[needs.tensions().size()];
    endTensions = new double[tensions.length];
    lengths = new double[tensions.length];
  }

  static CarriedForces of(Balance balance, Needs needs) {
    CarriedForces all = new CarriedForces(needs);
    Map<String, List<BarForces>> cut = new HashMap<>();
    for (Needs.BarOf need : needs.bars()) {
      List<BarForces> member =
          cut.computeIfAbsent(need.member(), name -> balance.internalForces(name).bars());
      all.add(
          member.stream().filter(one -> one.bar().equals(need.bar())).findFirst().orElseThrow());
    }
    List<Reaction> reactions = balance.reactions();
    for (int k = 0; k < all.x.length; k++) {
      Needs.ForceOf need = needs.forces().get(k);
      Connection connection = balance.device().connection(need.connection()).orElseThrow();
      all.put(
          k,
          need.body(),
          reaction(reactions, need),
          balance.device().sharing(connection, need.body()),
          balance.pose().frame(need.body()));
    }
    for (int k = 0; k < all.tensions.length; k++) {
      all.putTension(k, needs.tensions().get(k), balance);
    }
    return all;
  }

  private void add(BarForces forces) {
    Optional<String> open = Optional.empty();
    for (InsideForce force : InsideForce.values()) {
      open = open.or(() -> forces.unresolved(force));
    }
    barsOpen.add(open);
    bars.add(open.isPresent() ? BarLine.none() : BarLine.of(forces));
  }

  /** Between two bodies the ground has no line of its own: it takes the opposite. */
  private static Reaction reaction(List<Reaction> reactions, Needs.ForceOf need) {
    return reactions.stream()
        .filter(one -> one.connection().equals(need.connection()))
        .filter(one -> one.body().equals(need.body()))
        .findFirst()
        .or(
            () ->
                reactions.stream()
                    .filter(one -> one.connection().equals(need.connection()))
                    .findFirst())
        .orElseThrow();
  }

  private void put(int k, String body, Reaction reaction, int sharing, Frame frame) {
    frames.add(frame);
    double share = (reaction.body().equals(body) ? 1.0 : -1.0) / sharing;
    if (reaction.x() instanceof Answer.Value a
        && reaction.y() instanceof Answer.Value b
        && reaction.couple() instanceof Answer.Value c) {
      x[k] = a.si() * share;
      y[k] = b.si() * share;
      couples[k] = c.si() * share;
      forcesOpen.add(Optional.empty());
    } else {
      forcesOpen.add(Optional.of(why(reaction.size(), reaction.couple())));
    }
  }

  private void putTension(int k, String part, Balance balance) {
    Answer first = balance.answer(Ask.of(part, Measure.TENSION));
    Connection connection = balance.device().connection(part).orElseThrow();
    if (balance.answer(Ask.of(part, Measure.LENGTH)) instanceof Answer.Value length) {
      lengths[k] = length.si();
    }
    Answer last =
        connection instanceof Reeving || connection instanceof Wrap
            ? balance.answer(Ask.of(part, Measure.END_TENSION))
            : first;
    if (first instanceof Answer.Value a && last instanceof Answer.Value b) {
      int count = balance.device().sharing(connection, connection.bodies().get(0));
      tensions[k] = a.si() / count;
      endTensions[k] = b.si() / count;
      tensionsOpen.add(Optional.empty());
    } else {
      tensionsOpen.add(Optional.of(why(first, last)));
    }
  }

  private static String why(Answer... answers) {
    for (Answer answer : answers) {
      if (answer instanceof Answer.Unanswered none) {
        return none.explanation();
      }
    }
    return "it is not told";
  }

  /** A state of known forces, to be filled by {@link #read}. */
  static CarriedForces known(Needs needs, StateReader reader) {
    CarriedForces all = new CarriedForces(needs);
    for (int k = 0; k < needs.bars().size(); k++) {
      double[] starts = new double[reader.pieces(k)];
      double[] ends = new double[starts.length];
      for (int piece = 0; piece < starts.length; piece++) {
        starts[piece] = reader.start(k, piece);
        ends[piece] = reader.end(k, piece);
      }
      all.bars.add(BarLine.of(starts, ends));
      all.barsOpen.add(Optional.empty());
    }
    for (int k = 0; k < all.x.length; k++) {
      all.frames.add(Frame.IDENTITY);
      all.forcesOpen.add(Optional.empty());
    }
    for (int k = 0; k < all.tensions.length; k++) {
      all.tensionsOpen.add(Optional.empty());
    }
    return all;
  }

  /** Reads the state that was solved last. */
  void read(StateReader reader, List<Reading.Force> parts, List<Reading.Tension> lines, Pose pose) {
    for (int k = 0; k < bars.size(); k++) {
      reader.bar(k, bars.get(k).numbers());
    }
    for (int k = 0; k < x.length; k++) {
      Reading.Force part = parts.get(k);
      x[k] = reader.x(k) * part.share();
      y[k] = reader.y(k) * part.share();
      couples[k] = reader.couple(k) * part.share();
      frames.set(k, pose.frame(part.body()));
    }
    for (int k = 0; k < tensions.length; k++) {
      Reading.Tension line = lines.get(k);
      tensions[k] = line.first().factor() * reader.unknown(line.first().column()) / line.count();
      endTensions[k] = line.last().factor() * reader.unknown(line.last().column()) / line.count();
      lengths[k] = line.length(pose);
    }
  }

  /** A state to be filled by mixing this with another of the same needs. */
  CarriedForces empty(Needs needs) {
    CarriedForces room = new CarriedForces(needs);
    bars.forEach(bar -> room.bars.add(bar.empty()));
    room.barsOpen.addAll(barsOpen);
    room.frames.addAll(frames);
    room.forcesOpen.addAll(forcesOpen);
    room.tensionsOpen.addAll(tensionsOpen);
    return room;
  }

  /** Makes a bar {@code none + multiple · (one − none)}. */
  void mixBar(int k, CarriedForces none, CarriedForces one, double multiple) {
    bars.get(k).mix(none.bars.get(k), one.bars.get(k), multiple);
  }

  /** Makes a force {@code none + multiple · (one − none)}. */
  void mixForce(int k, CarriedForces none, CarriedForces one, double multiple) {
    x[k] = none.x[k] + multiple * (one.x[k] - none.x[k]);
    y[k] = none.y[k] + multiple * (one.y[k] - none.y[k]);
    couples[k] = none.couples[k] + multiple * (one.couples[k] - none.couples[k]);
    frames.set(k, one.frames.get(k));
  }

  /** Makes a tension {@code none + multiple · (one − none)}. */
  void mixTension(int k, CarriedForces none, CarriedForces one, double multiple) {
    tensions[k] = none.tensions[k] + multiple * (one.tensions[k] - none.tensions[k]);
    endTensions[k] = none.endTensions[k] + multiple * (one.endTensions[k] - none.endTensions[k]);
    lengths[k] = one.lengths[k];
  }

  /** Largest number that a state holds; 0 where nothing is carried. */
  boolean isZero() {
    for (BarLine bar : bars) {
      if (!bar.isZero()) {
        return false;
      }
    }
    return isZero(x) && isZero(y) && isZero(couples) && isZero(tensions) && isZero(endTensions);
  }

  private static boolean isZero(double[] numbers) {
    for (double number : numbers) {
      if (number != 0) {
        return false;
      }
    }
    return true;
  }

  Optional<String> barOpen(int k) {
    return barsOpen.get(k);
  }

  Optional<String> forceOpen(int k) {
    return forcesOpen.get(k);
  }

  Optional<String> tensionOpen(int k) {
    return tensionsOpen.get(k);
  }

  /** Forces of all parallel parts of a bar together. */
  BarLine bar(int k) {
    return bars.get(k);
  }

  /** Force on one part of a body, to the right. */
  double x(int k) {
    return x[k];
  }

  /** Force on one part of a body, up. */
  double y(int k) {
    return y[k];
  }

  double couple(int k) {
    return couples[k];
  }

  double size(int k) {
    return Math.hypot(x[k], y[k]);
  }

  /** Where the body of a force is. */
  Frame frame(int k) {
    return frames.get(k);
  }

  double tension(int k) {
    return tensions[k];
  }

  /** Length of the part with a tension, in the pose of the state. */
  double length(int k) {
    return lengths[k];
  }

  double endTension(int k) {
    return endTensions[k];
  }
}
