package freshfurrow.model.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class FieldLabelTest {
    @ParameterizedTest
    @CsvSource({
        "N80, North eighty, N80 North eighty",
        "N80, N80, N80",
        "Mill-pond, Mill pond, Mill-pond",
        "Mill-pond, Mill   pond, Mill-pond",
        "Mill-pond-2, Mill pond, Mill-pond-2 Mill pond",
        "mill-pond, Mill pond, mill-pond Mill pond",
        "O-Brien-40, O'Brien 40, O-Brien-40",
        "Mill--pond, Mill--pond, Mill--pond",
        "Mill-pond, Mill - pond, Mill-pond",
        "Nagyret, Nagyr\u00e9t, Nagyret Nagyr\u00e9t",
        "Nagyr-t, Nagyr\u00e9t, Nagyr-t Nagyr\u00e9t",
        "F1, \u00d8stre eng, F1 \u00d8stre eng"
    })
    void saysANameOnlyWhereItSaysMoreThanTheId(String id, String name, String label) {
        assertThat(FieldLabel.of(id, name)).isEqualTo(label);
    }
}
