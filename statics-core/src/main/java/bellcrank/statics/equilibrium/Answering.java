package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Subject;
import bellcrank.statics.equilibrium.internal.Solved;
import bellcrank.statics.units.Dimension;
import java.util.Optional;

/** Answers asks: sends each subject to what can read it. */
final class Answering {

  private final Balance balance;
  private final Device device;
  private final Solved solved;

  Answering(Balance balance, Solved solved) {
    this.balance = balance;
    this.device = balance.device();
    this.solved = solved;
  }

  /** The answer; the ask has been checked against the device. */
  Answer answer(Ask ask) {
    Answer whole = subject(ask);
    if (!ask.each() || !(whole instanceof Answer.Value value)) {
      return whole;
    }
    int count = count(ask);
    return new Answer.Value(value.si() / count, value.dimension());
  }

  private int count(Ask ask) {
    if (ask.subject() instanceof Subject.Part part) {
      Optional<Connection> connection = device.connection(part.name());
      if (connection.isPresent() && !MemberAnswers.concern(device, part.name(), ask)) {
        return device.sharing(connection.get(), ask.on().orElse(connection.get().bodies().get(0)));
      }
      return device.members().stream()
          .filter(member -> member.name().equals(part.name()))
          .mapToInt(Member::count)
          .findFirst()
          .orElse(1);
    }
    return 1;
  }

  private Answer subject(Ask ask) {
    Subject subject = ask.subject();
    if (subject instanceof Subject.Whole) {
      return whole(ask);
    }
    if (subject instanceof Subject.Ratio ratio) {
      return ratio(answer(ratio.numerator()), answer(ratio.denominator()));
    }
    if (subject instanceof Subject.Resultant resultant) {
      return new LoadAnswers(balance, solved).resultant(resultant, ask);
    }
    if (subject instanceof Subject.Spot spot) {
      return new PlaceAnswers(device, balance.pose()).point(spot, ask);
    }
    if (subject instanceof Subject.Centre centre) {
      return new CentreAnswers(device, balance.pose()).answer(centre, ask);
    }
    if (subject instanceof Subject.Advantage) {
      if (ask.measure() == Measure.EFFICIENCY || ask.measure() == Measure.RETURN_EFFICIENCY) {
        return ofLimits(ask);
      }
      Advantage advantage =
          balance
              .advantage()
              .orElseGet(() -> new Advantage.NotDefined("no effort and resistance are stated"));
      return ask.measure() == Measure.IDEAL ? advantage.idealAnswer() : advantage.actualAnswer();
    }
    if (subject instanceof Subject.Group group) {
      Optional<Answer> none = balance.noForces();
      return none.isPresent() ? none.get() : new GroupAnswers(balance, solved).answer(group, ask);
    }
    return subject instanceof Subject.Part part ? part(part.name(), ask) : ofLimits(ask);
  }

  private static Answer ofLimits(Ask ask) {
    return new Answer.Unanswered(
        Answer.Reason.NOT_DECIDED,
        ask.text() + " is worked out by the limits, not by the balance alone");
  }

  private Answer whole(Ask ask) {
    return switch (ask.measure()) {
      case VERDICT, FRICTION_FACTOR -> ofLimits(ask);
      case FREEDOMS -> new Answer.Value(balance.freedoms().size(), Dimension.NUMBER);
      case REDUNDANCY -> new Answer.Value(balance.redundancy(), Dimension.NUMBER);
      default -> new Answer.Words(balance.outcome().words());
    };
  }

  private static Answer ratio(Answer numerator, Answer denominator) {
    if (!(numerator instanceof Answer.Value a)) {
      return numerator;
    }
    if (!(denominator instanceof Answer.Value b)) {
      return denominator;
    }
    if (a.dimension() != b.dimension()) {
      return Values.notDefined("the two answers are quantities of different kinds");
    }
    return b.si() == 0
        ? Values.notDefined("the second answer is zero")
        : new Answer.Value(a.si() / b.si(), Dimension.NUMBER);
  }

  private Answer part(String name, Ask ask) {
    if (MemberAnswers.concern(device, name, ask)) {
      return new MemberAnswers(balance).answer(name, ask);
    }
    if (ask.measure() == Measure.LENGTH) {
      return new PlaceAnswers(device, balance.pose()).length(device.connection(name).orElseThrow());
    }
    Optional<Load> load = device.load(name);
    if (load.isPresent() && !(load.get() instanceof Sought)) {
      return new LoadAnswers(balance, solved).load(name, ask);
    }
    Optional<Answer> none = balance.noForces();
    if (none.isPresent()) {
      return none.get();
    }
    if (load.isPresent()) {
      return new SoughtAnswers(device, balance.pose(), solved).answer((Sought) load.get(), ask);
    }
    Connection connection = device.connection(name).orElseThrow();
    return new ConnectionAnswers(balance, solved)
        .answer(connection, device.connections().indexOf(connection), ask);
  }
}
