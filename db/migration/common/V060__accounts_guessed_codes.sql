-- Where wrong seat codes came from until that address was stopped. Every node decides by these rows, so that
-- who is stopped at one is stopped at all, and who is let through again is let through at all.
create table code_stop (
  id uuid primary key,
  version int not null,
  address varchar(64) not null,
  device varchar(200) not null,
  stopped_at timestamp(3) with time zone not null,
  stopped_until timestamp(3) with time zone not null,
  freed_at timestamp(3) with time zone,
  freed_by varchar(120) not null
);
create index code_stop_newest on code_stop (address, stopped_at);
create index code_stop_recent on code_stop (stopped_at);
