-- One life of the database after another: the first began empty, each further one from a copy at the second place, so
-- that everybody can tell that the service went back. What was known of the time between is kept with it.
create table service_life (
  number int primary key,
  id uuid not null unique,
  began_at timestamp(3) with time zone not null,
  -- Empty and null in the first life.
  copy_name varchar(60) not null,
  copy_folder varchar(500) not null,
  known_until timestamp(3) with time zone,
  known_line bigint,
  seen_at timestamp(3) with time zone,
  seen_line bigint,
  noted boolean not null
);

-- Lines of the record that were lost with the life before, as they lay at the second place.
create table lost_line (
  life uuid not null references service_life (id),
  number bigint not null,
  written_at timestamp(3) with time zone not null,
  actor varchar(200) not null,
  role varchar(40) not null,
  subject varchar(60) not null,
  subject_id varchar(120) not null,
  action varchar(120) not null,
  before_text varchar(100000) not null,
  after_text varchar(100000) not null,
  reason varchar(2000) not null,
  done_by varchar(200) not null,
  done_at timestamp(3) with time zone,
  primary key (life, number)
);
