-- Every posting of a segment's result: the first, and one for each change of a posted result. Each has its own
-- time for protests, fixed when it was posted. Never changed: a new posting is a new row.
create table result_posting (
  id uuid primary key,
  segment_id uuid not null references segment (id),
  -- The number of the standing that was posted.
  number int not null,
  posted_at timestamp(3) with time zone not null,
  posted_by varchar(120) not null,
  -- What had changed since the posting before; empty for the first.
  changed varchar(1000) not null,
  conduct_until timestamp(3) with time zone not null,
  calculation_until timestamp(3) with time zone not null,
  constraint result_posting_once unique (segment_id, number)
);

-- What was posted before was heard for the usual 30 minutes and 24 hours.
insert into result_posting
select v.id, r.segment_id, v.number, r.posted_at, r.posted_by, '',
  r.posted_at + interval '30' minute, r.posted_at + interval '24' hour
from segment_result r join result_version v on v.scope_id = r.segment_id
where r.posted_at is not null and v.cause = 'POSTED';

-- Against which posting a protest was handed in (0 before the first), who took it, when it was written down, and
-- the second person who confirmed that it was handed in earlier than that.
alter table protest add column posting int default 0 not null;
alter table protest add column written_at timestamp(3) with time zone;
alter table protest add column received_by_id varchar(200) default '' not null;
alter table protest add column confirmed_by varchar(120) default '' not null;
alter table protest add column confirmed_by_id varchar(200) default '' not null;
alter table protest add column confirmed_at timestamp(3) with time zone;
