package rimebook.accounts;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

import jakarta.persistence.LockModeType;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface PersonRepository extends Repository<Person, UUID> {

	Person saveAndFlush(Person person);

	void flush();

	Optional<Person> findById(UUID id);

	Optional<Person> findBySignInName(String signInName);

	List<Person> findAllByOrderByDisplayName();

	boolean existsBySignInName(String signInName);

	@Query("select count(p) > 0 from Person p where lower(p.displayName) = lower(:name) and p.id <> :except")
	boolean isNameTaken(String name, UUID except);

	@Query("select count(p) > 0 from Person p join p.roles r where p.active and r = :role")
	boolean existsActive(Role role);

	/**
	 * Locks everybody active, in one order, so that two administrators cannot shut each
	 * other out at the same moment.
	 */
	@Lock(LockModeType.PESSIMISTIC_WRITE)
	@Query("select p from Person p where p.active order by p.id")
	List<Person> lockActive();

}
