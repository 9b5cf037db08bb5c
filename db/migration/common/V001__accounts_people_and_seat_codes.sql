-- People who sign in with a name and a password.
create table person (
  id uuid primary key,
  version int not null,
  sign_in_name varchar(60) not null constraint person_sign_in_name_once unique,
  display_name varchar(120) not null,
  password_hash varchar(200) not null,
  active boolean not null,
  created_at timestamp(3) with time zone not null
);

create table person_role (
  person_id uuid not null references person (id),
  role varchar(20) not null,
  primary key (person_id, role)
);

-- The one-time link of the first start; only its digest is kept.
create table set_up_link (
  id int primary key,
  token_digest varchar(64) not null,
  made_at timestamp(3) with time zone not null,
  used_at timestamp(3) with time zone
);

-- What a judge signs in with: one code a seat, one paired device at a time.
create table seat_code (
  seat_id uuid primary key,
  version int not null,
  label varchar(160) not null,
  code varchar(8) not null constraint seat_code_once unique,
  issued_at timestamp(3) with time zone not null,
  device_digest varchar(64) constraint seat_device_once unique,
  device varchar(200) not null,
  paired_at timestamp(3) with time zone,
  last_heard_at timestamp(3) with time zone
);
