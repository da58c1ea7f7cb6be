package freshfurrow.app.begin;

/** A field as its row was typed or pasted; what is not known is empty. */
public record FieldRow(String id, String name, String area, String lat, String lon, String crop, String drainage) {
    boolean isBlank() {
        return (id + name + area + lat + lon + crop + drainage).isBlank();
    }

    /** What people call it: its name, or its id where it has none. */
    public String label() {
        return name.isBlank() ? id : name;
    }

    FieldRow withId(String other) {
        return new FieldRow(other, name, area, lat, lon, crop, drainage);
    }

    FieldRow withCrop(String other) {
        return new FieldRow(id, name, area, lat, lon, other, drainage);
    }

    FieldRow withName(String other) {
        return new FieldRow(id, other, area, lat, lon, crop, drainage);
    }
}
