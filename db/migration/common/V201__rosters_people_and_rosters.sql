-- People who skate, known once in the whole house. Once somebody's data were deleted the row is empty and stays for
-- the places that name it.
create table skater (
  id uuid primary key,
  version int not null,
  club_id uuid not null references club (id),
  given_name varchar(120) not null,
  family_name varchar(120) not null,
  birth_date date,
  membership_number varchar(40) not null,
  -- Whether the name may be printed, who agreed for a minor, and when.
  consent boolean not null,
  consent_guardian varchar(120) not null,
  consent_on date,
  -- Sixteen random bytes in hexadecimal digits: what lines of the record attest cannot be tried out without them.
  salt varchar(32) not null,
  erased_at timestamp(3) with time zone
);

-- Who is on the roster of an entry, stands by, or was on it and left.
create table roster_place (
  id uuid primary key,
  version int not null,
  entry_id uuid not null references entry (id),
  number int not null,
  skater_id uuid not null references skater (id),
  role varchar(20) not null,
  -- The number of the place whose skater this one stepped in for.
  instead_of int,
  changed_at timestamp(3) with time zone not null,
  constraint roster_place_number_once unique (entry_id, number),
  constraint roster_place_skater_once unique (entry_id, skater_id)
);
create index roster_place_of_skater on roster_place (skater_id);

-- Whom to call about a team.
create table team_contact (
  id uuid primary key,
  version int not null,
  entry_id uuid not null references entry (id),
  kind varchar(20) not null,
  name varchar(120) not null,
  phone varchar(40) not null,
  mail varchar(120) not null,
  salt varchar(32) not null
);
create index team_contact_of_entry on team_contact (entry_id);
