-- When what is known of the people of a competition is deleted, and what was.
create table roster_retention (
  competition_id uuid primary key references competition (id),
  version int not null,
  delete_on date not null,
  set_by varchar(120) not null,
  -- When it was done; null while it waits.
  deleted_at timestamp(3) with time zone,
  contacts int not null,
  forgotten int not null,
  erased int not null
);
