package bellcrank.statics.device;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class StopTest {

  private static Stop stop(Stop.Kind kind, double radius) {
    return new Stop(kind, "boom", "head", radius, Turn.CLOCKWISE);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.1, -0.1, 1e-300, Double.NaN, Double.POSITIVE_INFINITY})
  void aPlainEndHasNoRadius(double radius) {
    assertThatThrownBy(() -> stop(Stop.Kind.END, radius))
        .isInstanceOf(ModelException.class)
        .hasMessage("end at head: radius is " + radius + "; wanted: 0: a plain end has no radius");
  }

  @ParameterizedTest
  @EnumSource(Stop.Kind.class)
  void noRadiusIsNegative(Stop.Kind kind) {
    assertThatThrownBy(() -> stop(kind, -0.1)).isInstanceOf(ModelException.class);
  }

  @Test
  void aDrumHasARadius() {
    assertThatThrownBy(() -> Stop.drum("boom", "head", 0, Turn.CLOCKWISE))
        .isInstanceOf(ModelException.class)
        .hasMessage("drum at head: radius is 0.0; wanted: a number above 0");
    assertThat(Stop.drum("boom", "head", 0.1, Turn.CLOCKWISE).radius()).isEqualTo(0.1);
  }

  @Test
  void aNegativeZeroIsZero() {
    assertThat(stop(Stop.Kind.END, -0.0)).isEqualTo(Stop.end("boom", "head"));
    assertThat(stop(Stop.Kind.SHEAVE, -0.0))
        .isEqualTo(Stop.sheave("boom", "head", 0, Turn.CLOCKWISE));
  }
}
