package freshfurrow.desk.share;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.desk.server.Json;
import freshfurrow.desk.server.Part;
import freshfurrow.desk.server.Role;
import freshfurrow.desk.server.Routes;
import java.util.List;
import java.util.function.UnaryOperator;

/** How phones open the desk. */
public final class ShareDesk implements Part {
    private final boolean shared;
    private final UnaryOperator<String> crewLink;

    /** @param crewLink the link of a crew under an address */
    public ShareDesk(boolean shared, UnaryOperator<String> crewLink) {
        this.shared = shared;
        this.crewLink = crewLink;
    }

    /** Names of this computer on its networks. */
    public static List<String> addresses() {
        return OwnNetwork.addresses();
    }

    @Override
    public void answers(Routes routes) {
        routes.get("/api/share", Role.OWNER, request -> links());
    }

    private JsonNode links() {
        ObjectNode answer = Json.object().put("shared", shared);
        ArrayNode links = answer.putArray("links");
        if (shared) {
            for (String address : OwnNetwork.addresses()) {
                String link = crewLink.apply(address);
                CodePicture.Picture code = CodePicture.of(link);
                links.addObject()
                        .put("address", address)
                        .put("link", link)
                        .put("size", code.size())
                        .put("path", code.path());
            }
        }
        return answer;
    }
}
