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

  /** Cohen 1968: published 0.348 with even, 0.353 with uneven weights for the two directions. */
  @Test
  void weighted_kappa_agrees_with_cohen_1968() {
    Agreement agreement = agreement(new int[][] {{88, 14, 18}, {10, 40, 10}, {2, 6, 12}});

    assertThat(weighted(agreement, new int[][] {{0, 1, 3}, {1, 0, 6}, {3, 6, 0}}))
        .isCloseTo(0.347826, within(5e-7));
    assertThat(weighted(agreement, new int[][] {{0, 1, 4}, {1, 0, 6}, {2, 2, 0}}))
        .isCloseTo(0.353383, within(5e-7));
  }

  /** Fleiss, Cohen and Everitt 1969, agreement weights 0, 4/9 and 6/9: published 0.507. */
  @Test
  void weighted_kappa_agrees_with_fleiss_cohen_everitt_1969() {
    Agreement agreement = agreement(new int[][] {{106, 10, 4}, {22, 28, 10}, {2, 12, 6}});

    int[][] ninths = {{0, 9, 5}, {9, 0, 3}, {5, 3, 0}};

    assertThat(weighted(agreement, ninths)).isCloseTo(0.50706, within(5e-6));
  }

  private static double weighted(Agreement agreement, int[][] weights) {
    return agreement
        .weightedKappa((truth, answer) -> weights[index(truth)][index(answer)])
        .orElseThrow();
  }

  private static int index(String category) {
    return category.charAt(1) - '0';
  }

  @Test
  void with_every_miss_as_wrong_weighted_kappa_is_kappa() {
    Agreement agreement = agreement(new int[][] {{9, 3, 1}, {2, 7, 4}, {0, 5, 6}});

    assertThat(agreement.weightedKappa((t, a) -> t.equals(a) ? 0 : 7)).isEqualTo(agreement.kappa());
  }

  /** J. L. Fleiss's textbook table, from memory: 0.676. */
  @Test
  void kappa_agrees_with_a_textbook_table() {
    Agreement agreement = agreement(new int[][] {{75, 1, 4}, {5, 4, 1}, {0, 0, 10}});

    assertThat(agreement.kappa().orElseThrow()).isCloseTo(0.676471, within(5e-7));
  }
}
