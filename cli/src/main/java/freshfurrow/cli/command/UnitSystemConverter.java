package freshfurrow.cli.command;

import freshfurrow.app.begin.UnitSystem;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Units of the command line. */
final class UnitSystemConverter implements ITypeConverter<UnitSystem> {
    @Override
    public UnitSystem convert(String text) {
        return UnitSystem.of(text)
                .orElseThrow(
                        () -> new TypeConversionException("'" + text + "' is not us or metric; write one of them"));
    }
}
