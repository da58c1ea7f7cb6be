package freshfurrow.desk.share;

import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.util.List;

/** The addresses that this computer has on the networks it is in. */
final class OwnNetwork {
    private OwnNetwork() {}

    /** Those of IPv4 that are not of the whole Internet (RFC 1918), in the order of the system. */
    static List<String> addresses() {
        try {
            return NetworkInterface.networkInterfaces()
                    .filter(OwnNetwork::isUp)
                    .flatMap(NetworkInterface::inetAddresses)
                    .filter(address -> address instanceof Inet4Address && address.isSiteLocalAddress())
                    .map(InetAddress::getHostAddress)
                    .toList();
        } catch (SocketException e) {
            return List.of(); // without a network nobody else reaches the desk
        }
    }

    private static boolean isUp(NetworkInterface network) {
        try {
            return network.isUp() && !network.isLoopback();
        } catch (SocketException e) {
            return false;
        }
    }
}
