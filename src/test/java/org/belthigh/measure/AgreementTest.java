package org.belthigh.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.belthigh.model.Share;
import org.junit.jupiter.api.Test;

class AgreementTest {
  private static Agreement agreement(int[][] table) {
    Agreement agreement = new Agreement();
    for (int truth = 0; truth < table.length; truth++) {
      for (int answer = 0; answer < table.length; answer++) {
        for (int i = 0; i < table[truth][answer]; i++) {
          agreement.add("c" + truth, "c" + answer);
        }
      }
    }
    return agreement;
  }

  /** Cohen 1968, Psychological Bulletin 70:213-220: shares of 200, published kappa 0.492. */
  @Test
  void kappa_agrees_with_cohen_1968() {
    Agreement agreement = agreement(new int[][] {{88, 14, 18}, {10, 40, 10}, {2, 6, 12}});

    assertThat(agreement.right()).isEqualTo(new Share(140, 200));
    assertThat(agreement.kappa().orElseThrow()).isCloseTo(0.491525, within(5e-7));
  }

  /** Fleiss, Cohen and Everitt 1969, Psychological Bulletin 72:323-327: 0.429. */
  @Test
  void kappa_agrees_with_fleiss_cohen_everitt_1969() {
    Agreement agreement = agreement(new int[][] {{106, 10, 4}, {22, 28, 10}, {2, 12, 6}});

    assertThat(agreement.kappa().orElseThrow()).isCloseTo(0.428571, within(5e-7));
  }

  @Test
  void guessing_in_the_same_mix_is_worth_nothing() {
    assertThat(agreement(new int[][] {{9, 3}, {3, 1}}).kappa().orElseThrow()).isEqualTo(0.0);
  }

  @Test
  void all_right_is_one_and_all_wrong_below_nought() {
    assertThat(agreement(new int[][] {{3, 0}, {0, 5}}).kappa().orElseThrow()).isEqualTo(1.0);
    assertThat(agreement(new int[][] {{0, 4}, {4, 0}}).kappa().orElseThrow()).isEqualTo(-1.0);
  }

  @Test
  void one_spot_tossed_and_called_all_day_has_no_kappa() {
    assertThat(agreement(new int[][] {{7}}).kappa()).isEmpty();
    assertThat(agreement(new int[][] {}).kappa()).isEmpty();
  }

  @Test
  void one_spot_tossed_and_sometimes_missed_is_worth_nothing() {
    assertThat(agreement(new int[][] {{5, 2}, {0, 0}}).kappa().orElseThrow()).isEqualTo(0.0);
  }
}
