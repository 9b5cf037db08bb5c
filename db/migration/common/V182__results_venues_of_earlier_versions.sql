-- Where and when a competition was held, for the versions of its results that do not tell it themselves: as it stood when
-- versions began to.
create table earlier_venue (
  competition_id uuid primary key references competition (id) on delete cascade,
  place varchar(120) not null,
  first_day date not null,
  last_day date not null,
  zone varchar(60) not null
);

insert into earlier_venue select id, place, first_day, last_day, zone from competition;
