package bellcrank.statics.harness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import bellcrank.statics.units.Unit;
import org.junit.jupiter.api.Test;

/** The rule of printed digits; what a device file makes of it is tested with the files. */
final class ExpectedAnswerTest {

  private static ExpectedAnswer.Amount amount(String text, Dimension dimension, int digits) {
    Unit unit = Unit.parse(text.substring(text.indexOf(' ') + 1), dimension);
    return new ExpectedAnswer.Amount(Quantity.parse(text, dimension), unit, digits);
  }

  private static CheckedAnswer check(String ask, ExpectedAnswer.Value value) {
    Balance balance = Balance.of(Rigs.press());
    return new ExpectedAnswer(Ask.parse(ask), value).check(balance.answer(ask), balance);
  }

  @Test
  void aNumberHoldsToHalfAUnitOfItsLastDigitInItsUnit() {
    assertThat(check("ram", amount("1410 N", Dimension.FORCE, 3)).holds()).isTrue();
    assertThat(check("ram", amount("1410 N", Dimension.FORCE, 4)).holds()).isFalse();
    assertThat(check("ram", amount("1.41 kN", Dimension.FORCE, 3)).allowed())
        .isCloseTo(5, within(1e-9));
    // 1408 N are 316.53 lbf
    assertThat(check("ram", amount("316.5 lbf", Dimension.FORCE, 4)).holds()).isTrue();
    assertThat(check("ram", amount("316.6 lbf", Dimension.FORCE, 4)).holds()).isFalse();
  }

  @Test
  void aZeroIsHeldAgainstTheLargestLoad() {
    CheckedAnswer zero = check("hinge.x", amount("0 N", Dimension.FORCE, 3));
    assertThat(zero.holds()).isTrue();
    assertThat(zero.allowed()).isCloseTo(0.11, within(1e-9));
    assertThat(check("hinge.y", amount("0 N", Dimension.FORCE, 3)).holds()).isFalse();
  }

  @Test
  void anAngleMayBeAFullTurnOff() {
    assertThat(check("hand.direction", amount("-90 deg", Dimension.ANGLE, 3)).holds()).isTrue();
    assertThat(check("hand.direction", amount("-91 deg", Dimension.ANGLE, 3)).holds()).isFalse();
  }

  @Test
  void wordsMustBeTheSame() {
    assertThat(check("outcome", new ExpectedAnswer.Words("in balance")).holds()).isTrue();
    assertThat(check("outcome", new ExpectedAnswer.Words("no balance")).holds()).isFalse();
    assertThat(check("ram", new ExpectedAnswer.Words("in balance")).found())
        .isInstanceOf(Answer.Value.class);
  }

  @Test
  void anotherKindOfQuantityDoesNotHold() {
    assertThat(check("ram", amount("1408 N·m", Dimension.MOMENT, 4)).holds()).isFalse();
  }

  @Test
  void digitsAndUnitAreChecked() {
    assertThatThrownBy(() -> amount("1 N", Dimension.FORCE, 16))
        .isInstanceOf(ModelException.class)
        .hasMessage("expected answer: digits is 16; wanted: 1 to 15");
    assertThatThrownBy(
            () -> new ExpectedAnswer.Amount(new Quantity(1, Dimension.FORCE), Unit.parse("kg"), 3))
        .isInstanceOf(ModelException.class)
        .hasMessage("expected answer: unit is kg; wanted: a unit that measures a force");
  }
}
