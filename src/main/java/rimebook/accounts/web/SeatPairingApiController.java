package rimebook.accounts.web;

import java.util.UUID;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

import rimebook.accounts.SeatCodes;
import rimebook.pages.Device;

/**
 * Gives a program the seat of a code; it shows the token with every later request. Where
 * the seat's own tablet is alive the answer is 202, and the token opens nothing before
 * the referee says yes.
 */
@RestController
class SeatPairingApiController {

	private final SeatCodes seats;

	SeatPairingApiController(SeatCodes seats) {
		this.seats = seats;
	}

	@PostMapping(path = "/api/seat-pairings", consumes = MediaType.APPLICATION_JSON_VALUE)
	ResponseEntity<PairingResponse> pair(@Valid @RequestBody PairingRequest request, Device device) {
		SeatCodes.Pairing pairing = this.seats.pair(request.given(), device.description(), null, request.request());
		return ResponseEntity.status(pairing.waiting() ? HttpStatus.ACCEPTED : HttpStatus.OK)
			.body(PairingResponse.of(pairing));
	}

	/**
	 * The code of the seat slip.
	 *
	 * @param request made at random by the program, {@code null} for none: the same code
	 * sent again with it is answered alike and done once
	 */
	record PairingRequest(
			@NotBlank(message = "is missing; give the 8 letters and digits of the seat slip") @Size(max = 40,
					message = "is too long; give the 8 letters and digits of the seat slip") @Nullable String code,
			@Nullable UUID request) {

		String given() {
			return (this.code != null) ? this.code : "";
		}

	}

	/**
	 * The seat that was taken.
	 *
	 * @param token to be sent as {@code Authorization: Bearer <token>}
	 */
	record PairingResponse(String token, UUID seat, String label) {

		static PairingResponse of(SeatCodes.Pairing pairing) {
			return new PairingResponse(pairing.token(), pairing.seat().seat(), pairing.seat().label());
		}

	}

}
