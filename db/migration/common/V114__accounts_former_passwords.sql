-- The digests of the passwords of their own that people used before the one in use: the last few are not used again.
create table former_password (
  person_id uuid not null references person (id),
  number int not null,
  password_hash varchar(200) not null,
  primary key (person_id, number)
);
