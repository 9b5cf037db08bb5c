package rimebook.pages;

import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * What a rink may set for its seat slips.
 *
 * @param address where tablets reach this house, such as {@code http://192.168.4.2:8080};
 * empty to take an address of this machine in its networks
 */
@ConfigurationProperties("rimebook.slips")
record HouseSettings(@DefaultValue("") String address) {

}
